import { DEMO_BOARDS } from "@lapline/contract";
import { describe, expect, test } from "vitest";
import { applyEdit, type Draft } from "./applyEdit";
import { planOf } from "./planOf";

const read = planOf(DEMO_BOARDS[0]?.text ?? "");
if (!read.ok) throw new Error("the demo board cannot be read");
const opened: Draft = { file: read.file, problems: [], good: read };

describe("applyEdit", () => {
  test("a changed reading changes the plan at once", () => {
    const wider = applyEdit(opened, { path: ["survey", "stations", 4, "left"], value: "10 in" });
    expect(wider.problems).toEqual([]);
    expect(wider.good.plan.shape?.widthMaxM).toBeGreaterThan(opened.good.plan.shape?.widthMaxM ?? 1);
    expect(wider.good.plan.layup?.coats[0]?.resinMassKg).not.toBe(
      opened.good.plan.layup?.coats[0]?.resinMassKg,
    );
  });

  test("a slip keeps the last good plan and names the field", () => {
    const slip = applyEdit(opened, { path: ["survey", "stations", 4, "left"], value: "9 9/16" });
    expect(slip.good).toBe(opened.good);
    expect(slip.file.survey.stations[4]?.left).toBe("9 9/16");
    expect(slip.problems.map(({ path }) => path)).toEqual(["survey.stations[4].left"]);
    const mended = applyEdit(slip, { path: ["survey", "stations", 4, "left"], value: "9 9/16 in" });
    expect(mended.problems).toEqual([]);
  });

  test("a station goes and another comes", () => {
    const fewer = applyEdit(opened, { path: ["survey", "stations", 0], value: undefined });
    expect(fewer.good.plan.shape?.readings.length).toBeLessThan(opened.good.plan.shape?.readings.length ?? 0);
    const more = applyEdit(opened, { path: ["survey", "stations", 9], value: { fromTail: "18 in" } });
    expect(more.file.survey.stations).toHaveLength(10);
    expect(more.problems.every(({ path }) => path.startsWith("survey.stations[9]"))).toBe(true);
  });
});
