import { describe, expect, it } from "vitest";
import { FOAM_EXAMPLES, findFoam } from "./foams";

describe("foam ids", () => {
  it.each(FOAM_EXAMPLES)("%s is one", (id) => {
    expect(findFoam(id)?.densityKgM3.value).toBe(Number(id.split("-")[1]));
  });

  it.each([
    "pu",
    "pu-",
    "pu-4",
    "pu-480",
    "eps-0",
    "foam-48",
    "PU-48",
    " pu-48",
    "pu-48 kg",
    "eps-1e1",
    "__proto__",
  ])("%s is none", (id) => {
    expect(findFoam(id)).toBeNull();
  });

  it("puts the least densities of ASTM D6817 (EPS15, 19, 22, 29) inside what EPS is sold in", () => {
    for (const id of ["eps-14.4", "eps-18.4", "eps-21.6", "eps-28.8"]) expect(findFoam(id)?.kind).toBe("eps");
  });
});
