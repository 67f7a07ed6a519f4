import { type Finding, type Plan, say } from "@lapline/engine";
import { describe, expect, test } from "vitest";
import { symmetrySentences } from "../src";
import { DEMO_PLANS } from "./demoPlans";

const MM = { units: "mm", language: "en" } as const;
const [demo] = DEMO_PLANS;
if (demo === undefined) throw new Error("no demo board");

function planWith(code: string, severity: Finding["severity"] = "note"): Plan {
  const finding: Finding = { code, severity, path: "", text: "", says: say`found` };
  return { ...(demo?.plan as Plan), findings: [finding] };
}

describe("symmetrySentences", () => {
  test("says both sentences where nothing was found", () => {
    expect(symmetrySentences(planWith("mix.dew-point"), { units: "mm", language: "en" }, true)).toHaveLength(
      2,
    );
  });

  test("says nothing of sides that nobody measured", () => {
    expect(
      symmetrySentences(planWith("shape.symmetry-unknown", "warning"), { units: "mm", language: "en" }),
    ).toEqual([]);
    expect(
      symmetrySentences(planWith("shape.symmetry-unknown"), { units: "mm", language: "en" }),
    ).toHaveLength(2);
  });

  test("agrees with the plan: what it finds is said in its words, and else that both sides agree", () => {
    const found = symmetrySentences(planWith("shape.asymmetry"), MM);
    expect(found[0]).toBe("Found.");
    expect(found[1]).toMatch(/centreline lies on the stringer/);
    const agreed = symmetrySentences(planWith("shape.centreline"), MM);
    expect(agreed[0]).toMatch(/^Both sides agree within [\d.]+ mm; the most is at \d+ mm from the tail\.$/);
    expect(agreed[1]).toBe("Found.");
    for (const { plan } of DEMO_PLANS) {
      const asymmetry = plan.findings.find(({ code }) => code === "shape.asymmetry");
      expect(/agree/.test(symmetrySentences(plan, MM)[0] ?? "")).toBe(asymmetry === undefined);
    }
  });

  test("leaves to a finding what it says, only where both stand together", () => {
    expect(
      symmetrySentences(planWith("shape.asymmetry"), { units: "mm", language: "en" }, true),
    ).toHaveLength(1);
    expect(
      symmetrySentences(planWith("shape.centreline"), { units: "mm", language: "en" }, true)[0],
    ).not.toMatch(/centreline/);
    expect(symmetrySentences(planWith("shape.asymmetry"), { units: "mm", language: "en" })).toHaveLength(2);
  });
});
