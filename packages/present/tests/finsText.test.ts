import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { type Plan, planBuild } from "@lapline/engine";
import { describe, expect, test } from "vitest";
import { formatPlanText, formatTapeLength } from "../src";

const DEMO = DEMO_BOARDS[0]?.text ?? "";

/** The quad of the demo with something else in its fins. */
function planOf(fins: object, survey: object = {}): Plan {
  const file = JSON.parse(DEMO);
  const read = readBoardFile(
    JSON.stringify({
      ...file,
      survey: { ...file.survey, ...survey },
      fins: { ...file.fins, ...fins },
    }),
  );
  if (!read.ok) throw new Error("the board cannot be read");
  return planBuild(read.board);
}

/** The front fins alone, so far up. */
const planSet = (fromTail: string): readonly object[] => [
  { ...JSON.parse(DEMO).fins.set[0], fromTail },
  { ...JSON.parse(DEMO).fins.set[1], fromTail: fromTail === "7 1/2 in" ? "2 in" : "6 in" },
];

function finsText(plan: Plan, units: "inch" | "mm"): string {
  const text = formatPlanText(plan, { units, language: "en" });
  expect(text.split("\n").filter((line) => line.length > 80)).toEqual([]);
  return text.slice(text.indexOf("\nFINS"), text.indexOf("\nGLASS"));
}

const flat = (text: string): string => text.replace(/\s+/g, " ");

describe("the fins in the text", () => {
  test("the three rules stand side by side with what each moves, and one is recommended with its reason", () => {
    const plan = planOf({ sides: "rail" });
    const text = finsText(plan, "mm");
    expect(text).toMatch(/Recommended for the sides: average\. Why stands among/);
    expect(text).toMatch(/rail\* +front .* - +-$/m);
    const average = plan.finset?.sidesCompared.find(({ id }) => id === "average")?.pairs[0];
    const movedMm = ((average?.leftMovesM ?? 0) * 1000).toFixed(1);
    expect(text).toMatch(new RegExp(`average +front .* ${movedMm} outward`));
  });

  test("of a swallow tail each distance says tips or crotch, and the notch stands under what was measured", () => {
    const tail = { kind: "swallow", width: "5 in", depth: "4 in" };
    const asSet = [
      { fin: "front", side: "left", trailing: { fromTail: "190 mm", fromCentreline: "150 mm" } },
    ];
    const plan = planOf({ asSet, fromTailOf: "crotch", set: planSet("7 1/2 in") }, { tail });
    const text = flat(finsText(plan, "mm"));
    expect(text).toContain("from the tips by tape along the bottom, and from the crotch where that is said");
    expect(text).toContain("fin from tips crotch line rail tips crotch line");
    expect(text).toMatch(/trailing, from the crotch 190\.5 mm, read 190 mm/);
    expect(text).toContain("front, crotch to trailing mark");
    expect(text).toContain("crotch to trailing marks: left");
    expect(text).not.toContain("tail's middle");
    expect(text).toMatch(/Leash plug.* from the tips \(.* from the crotch\)/);
    expect(formatPlanText(plan, { units: "mm", language: "en" })).toMatch(
      /notch +102 mm +from the tips to the crotch; 127 mm between the tips/,
    );
    const tips = flat(finsText(planOf({ asSet, set: planSet("11 1/2 in") }, { tail }), "mm"));
    expect(tips).toMatch(/trailing, from the tips 292 mm, read 190 mm/);
    expect(flat(finsText(planOf({}), "mm"))).not.toMatch(/tips|crotch (?!of)/);
  });

  test("the gate counts what is still to be made and names the first; out comes before open, go after all", () => {
    const open = flat(finsText(planOf({ verify: { confirmed: ["bottom-up"] } }), "inch"));
    expect(open).toContain("MARK AND VERIFY: NO CUT YET. 25 checks are still to be made. Next: Nose away.");
    expect(open).toContain("[x] Bottom up [ ] Nose away");
    const out = flat(finsText(planOf({ verify: { cantBlocks: [{ fin: "rear", cant: "8 deg" }] } }), "inch"));
    expect(out).toContain("NO CUT YET. 1 check is out. Correct first: Cant block, rear.");
    expect(out).toContain("[!] Cant block, rear: block 4.0 deg +/- 1.0 deg, read 8.0 deg");
  });

  test("a fin as set has its errors and the move that brings it back; one within tolerance says yes", () => {
    const text = finsText(
      planOf({
        asSet: [
          {
            fin: "front",
            side: "left",
            on: "fill",
            trailing: { fromTail: "292.1 mm", fromCentreline: "151.9 mm" },
            leading: { fromTail: "403 mm", fromCentreline: "149 mm" },
          },
          { fin: "front", side: "right", trailing: { fromTail: "292.1 mm", fromCentreline: "152.1 mm" } },
        ],
      }),
      "mm",
    );
    expect(text).toMatch(/front left +fill .*NO: leading end/);
    expect(flat(text)).toMatch(/leading end 3\.\d mm inward/);
    expect(flat(text)).toMatch(/NO: measure both marks/);
  });

  test("a diagonal reads alike in the table and in the check, and what two sides differ by is in millimetres", () => {
    for (const units of ["mm", "inch"] as const) {
      const plan = planOf({});
      const text = flat(finsText(plan, units));
      const [diagonal] = plan.finset?.pairs[0]?.diagonals ?? [];
      if (diagonal === undefined) throw new Error("no diagonal");
      const left = formatTapeLength(diagonal.leftTapeM, { units, language: "en" });
      expect(text.split(left).length - 1).toBeGreaterThanOrEqual(2);
      expect(text).toMatch(/left less right -?[\d.]+ mm \+\/- 1\.0 mm/);
      expect(text).toContain(diagonal.acrossWorthRatio.toFixed(2));
    }
  });

  test("names are broken between their words", () => {
    for (const units of ["mm", "inch"] as const) {
      const text = finsText(planOf({ boxes: "before-glass", sides: "centreline" }), units);
      expect(text).not.toMatch(/front[ -]$|^ {2}(ft|ght|e|\*)( |$)/m);
      expect(text).toMatch(/centreline\*/);
    }
  });

  test("glassed-on fins see no router", () => {
    const text = finsText(planOf({ boxes: "glassed-on" }), "mm");
    expect(text).toMatch(/MARK AND VERIFY: NO GLASS YET/);
    expect(text).not.toMatch(/router|NO CUT/);
  });

  test("glassed-on fins have fillets instead of pockets, boxes before the glass a patch", () => {
    expect(finsText(planOf({ boxes: "glassed-on" }), "mm")).toMatch(/fillet/);
    const before = finsText(planOf({ boxes: "before-glass" }), "mm");
    expect(before).toMatch(/patch$/m);
    expect(flat(before)).toMatch(/pocket, from the foam/);
  });
});
