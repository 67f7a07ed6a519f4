import { type BoardFile, DEMO_BOARDS } from "@lapline/contract";
import { describe, expect, test } from "vitest";
import { type FieldPath, withField } from "../board/withField";
import type { GoodBoard } from "./GoodBoard";
import { planOf } from "./planOf";
import { understand } from "./understand";

const read = planOf(DEMO_BOARDS[0]?.text ?? "");
if (!read.ok) throw new Error("the demo board cannot be read");
const opened: Typed = { file: read.file, good: read };

interface Typed {
  readonly file: BoardFile;
  readonly good: GoodBoard;
}

interface Edit {
  readonly path: FieldPath;
  readonly value: unknown;
}

/** A field typed, and what is understood of the file then. */
function applyEdit({ file, good }: Typed, { path, value }: Edit) {
  const typed = withField(file, path, value);
  const { problems, good: next } = understand(typed, good.file);
  return { file: typed, problems, good: next ?? good };
}

describe("understand", () => {
  test("a changed reading changes the plan at once", () => {
    const wider = applyEdit(opened, { path: ["survey", "stations", 4, "left"], value: "10 in" });
    expect(wider.problems).toEqual([]);
    expect(wider.good.plan.shape?.widthMaxM).toBeGreaterThan(opened.good.plan.shape?.widthMaxM ?? 1);
    expect(wider.good.plan.layup?.coats[0]?.resinMassKg).not.toBe(
      opened.good.plan.layup?.coats[0]?.resinMassKg,
    );
  });

  test("a slip leaves the reading at its last understood value and names the field", () => {
    const slip = applyEdit(opened, { path: ["survey", "stations", 4, "left"], value: "9 9/16" });
    expect(slip.good.plan).toEqual(opened.good.plan);
    expect(slip.file.survey.stations[4]?.left).toBe("9 9/16");
    expect(slip.problems.map(({ path }) => path)).toEqual(["survey.stations[4].left"]);
    const mended = applyEdit(slip, { path: ["survey", "stations", 4, "left"], value: "9 9/16 in" });
    expect(mended.problems).toEqual([]);
  });

  test("one slip does not hold up what is typed elsewhere", () => {
    const slip = applyEdit(opened, { path: ["survey", "stations", 4, "left"], value: "9 9/16" });
    const after = applyEdit(slip, { path: ["fins", "set", 0, "cant"], value: "5 deg" });
    expect(after.problems.map(({ path }) => path)).toEqual(["survey.stations[4].left"]);
    const [mark] = after.good.plan.finset?.marks ?? [];
    expect(mark?.cantRad).toBeCloseTo((5 * Math.PI) / 180, 9);
    expect(after.good.plan.shape).toEqual(opened.good.plan.shape);
  });

  test("a reading of the gate that is not understood is left out, and the others count", () => {
    const read = (besideNose: string) => ({ fin: "front", side: "left", besideNose });
    const good = applyEdit(opened, {
      path: ["fins", "verify"],
      value: { strings: [read("76 mm"), { ...read("75 mm"), side: "right" }] },
    });
    expect(good.problems).toEqual([]);
    const slip = applyEdit(good, { path: ["fins", "verify", "strings", 0, "besideNose"], value: "76" });
    const stringOf = (side: string) =>
      slip.good.plan.finset?.verify.checks.find(({ id }) => id === `string-front-${side}`)?.lengths[0]?.readM;
    expect(stringOf("left")).toBeNull();
    expect(stringOf("right")).toBeCloseTo(0.075, 9);
    expect(slip.problems.map(({ path }) => path)).toEqual(["fins.verify.strings[0].besideNose"]);
  });

  test("a fin that is only begun is left out until it is whole", () => {
    const begun = applyEdit(opened, {
      path: ["fins", "set", 9],
      value: { fin: "keel", fromTail: "", fromRail: "", base: "" },
    });
    expect(begun.good.plan.finset).toEqual(opened.good.plan.finset);
    expect(begun.problems.length).toBeGreaterThan(0);
  });

  test("a station goes and another comes", () => {
    const fewer = applyEdit(opened, { path: ["survey", "stations", 0], value: undefined });
    expect(fewer.good.plan.shape?.readings.length).toBeLessThan(opened.good.plan.shape?.readings.length ?? 0);
    const more = applyEdit(opened, { path: ["survey", "stations", 9], value: { fromTail: "18 in" } });
    expect(more.file.survey.stations).toHaveLength(10);
    expect(more.problems.every(({ path }) => path.startsWith("survey.stations[9]"))).toBe(true);
  });
});
