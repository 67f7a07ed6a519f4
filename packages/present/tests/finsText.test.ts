import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { type Plan, planBuild } from "@lapline/engine";
import { describe, expect, test } from "vitest";
import { formatPlanText } from "../src";

const DEMO = DEMO_BOARDS[0]?.text ?? "";

/** The quad of the demo with something else in its fins. */
function planOf(fins: object): Plan {
  const file = JSON.parse(DEMO);
  const read = readBoardFile(JSON.stringify({ ...file, fins: { ...file.fins, ...fins } }));
  if (!read.ok) throw new Error("the board cannot be read");
  return planBuild(read.board);
}

function finsText(plan: Plan, units: "inch" | "mm"): string {
  const text = formatPlanText(plan, { units });
  expect(text.split("\n").filter((line) => line.length > 80)).toEqual([]);
  return text.slice(text.indexOf("\nFINS"), text.indexOf("\nGLASS"));
}

const flat = (text: string): string => text.replace(/\s+/g, " ");

describe("the fins in the text", () => {
  test("the three rules stand side by side with what each moves, and one is recommended with its reason", () => {
    const plan = planOf({ sides: "rail" });
    const text = finsText(plan, "mm");
    expect(text).toMatch(/Recommended for the sides: average. Because: .*the sides differ by/s);
    expect(text).toMatch(/rail \* +front .* - +-$/m);
    const average = plan.finset?.sidesCompared.find(({ id }) => id === "average")?.pairs[0];
    const movedMm = ((average?.leftMovesM ?? 0) * 1000).toFixed(1);
    expect(text).toMatch(new RegExp(`average +front .* ${movedMm} outward`));
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
    expect(text).toMatch(/front-left +fill .*NO: leading end/);
    expect(flat(text)).toMatch(/leading end 3\.\d mm inward/);
    expect(flat(text)).toMatch(/NO: measure both marks/);
  });

  test("glassed-on fins have fillets instead of pockets, boxes before the glass a patch", () => {
    expect(finsText(planOf({ boxes: "glassed-on" }), "mm")).toMatch(/fillet/);
    const before = finsText(planOf({ boxes: "before-glass" }), "mm");
    expect(before).toMatch(/patch$/m);
    expect(flat(before)).toMatch(/pocket, from the foam/);
  });
});
