import { describe, expect, test } from "vitest";
import { demoPlan } from "../../tests/demoPlan";
import { findingsAt, flagsOf, isWithin, numberFindings } from "./findingsAt";

describe("findings at their place", () => {
  test.each([
    ["fins.set[0]", true],
    ["fins.set[0].box.depth", true],
    ["fins.set[0][1]", true],
    ["fins.set[01]", false],
    ["fins.settle", false],
    ["fins", false],
  ])("%s within fins.set[0]: %s", (path, is) => {
    expect(isWithin(path, "fins.set[0]")).toBe(is);
  });

  test("are numbered through the set, and every fin's tape has its numbers", () => {
    const { plan, fins } = demoPlan({
      set: [
        { fin: "front", fromTail: "11 in", fromRail: "1/2 in", base: "4 in", box: deep },
        { fin: "rear", fromTail: "6 in", fromRail: "2 in", base: "3 3/4 in", cant: "20 deg" },
      ],
    });
    const numbered = numberFindings(plan, fins.set);
    expect(numbered.map(({ number }) => number)).toEqual(numbered.map((_, i) => i + 1));
    expect(numbered).toHaveLength(findingsAt(plan, "fins.set").length);
    const flags = flagsOf(numbered);
    const count = (fin: string) => numbered.filter((each) => each.fin === fin).length;
    expect(flags.get("front")).toBe(`1–${count("front")}`);
    expect(flags.get("rear")).toMatch(new RegExp(`^${count("front") + 1}(–${numbered.length})?$`));
    expect([...flags.keys()]).toEqual(["front", "rear"]);
  });
});

const deep = { length: "118 mm", width: "21 mm", depth: "25 mm" };
