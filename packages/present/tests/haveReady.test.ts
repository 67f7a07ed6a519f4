import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { type Plan, planBuild } from "@lapline/engine";
import { describe, expect, it } from "vitest";
import { stepsBlock } from "../src/text/stepsBlock";
import { haveReady } from "../src/words/haveReady";

const GLASS = { lapKind: "cut", logos: true, pinline: true, finish: "sanded" };

function planOf(foam: string, resin: string): Plan {
  const file = JSON.parse(DEMO_BOARDS[1]!.text);
  file.blank = { ...file.blank, foam, vent: true };
  file.glass = { ...file.glass, ...GLASS, resin };
  file.fins = { ...file.fins, boxes: "glassed-on" };
  const read = readBoardFile(JSON.stringify(file));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return planBuild(read.board);
}

const PLANS = [planOf("eps-19", "epoxy"), planOf("xps-32", "epoxy"), planOf("pu-48", "polyester")];

describe("what to have ready", () => {
  it("has German for every material that any step names", () => {
    const materials = PLANS.flatMap(({ steps }) => (steps ?? []).flatMap((step) => step.materials));
    expect(new Set(materials).size).toBeGreaterThan(12);
    for (const material of materials) {
      const german = haveReady([material], { units: "mm", language: "de" });
      expect(german).toMatch(/^Bereitlegen: /);
      expect(german).not.toContain(material);
    }
  });

  it("stands under each step that is still to do, and under none that is done", () => {
    const [plan] = PLANS;
    const steps = plan!.steps!;
    const linesOf = (shown: Plan) =>
      stepsBlock(shown, { units: "mm", language: "en" }).lines.filter((line) =>
        line.includes("Have ready: "),
      );
    expect(linesOf(plan!)).toHaveLength(steps.filter(({ materials }) => materials.length > 0).length);
    expect(linesOf({ ...plan!, steps: steps.map((step) => ({ ...step, done: true })) })).toEqual([]);
  });
});
