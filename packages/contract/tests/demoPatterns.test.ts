import { planBuild } from "@lapline/engine";
import { describe, expect, it } from "vitest";
import { DEMO_BOARDS } from "../src/demoBoards";
import { readBoardFile } from "../src/readBoardFile";

describe.each(DEMO_BOARDS)("the cloth patterns of $id", ({ text }) => {
  const read = readBoardFile(text);
  if (!read.ok) throw new Error("a demo board must be readable");
  const { layup } = planBuild(read.board);
  if (layup === null) throw new Error("a demo board must have its glass");
  const full = layup.pieces.filter(({ extent }) => extent === null);
  const patternOf = (id: string) => layup.patterns.find((pattern) => pattern.id === id)!;

  it.each(full)("$id: within 3 % of the surface that it must cover", ({ pattern, areaM2 }) => {
    expect(Math.abs(patternOf(pattern).areaM2 / areaM2 - 1)).toBeLessThan(0.03);
  });

  it.each(full)("$id: the difference is the lap's turn, and under 1 % of drape", (piece) => {
    // Steiner: rolled out, an edge that turns once round is wider by π lap² than lap × edge; the notches take that out again.
    const lapM = piece.lapAreaM2 / layup.railLineM;
    const drapeM2 = patternOf(piece.pattern).areaM2 - piece.areaM2 - Math.PI * lapM ** 2;
    expect(Math.abs(drapeM2) / piece.areaM2).toBeLessThan(0.01);
  });

  it("is cut as the pieces say: overhang at both ends, all notches inside the lap", () => {
    for (const piece of full) {
      const { lengthM, widthM, notches } = patternOf(piece.pattern);
      const lapM = piece.lapAreaM2 / layup.railLineM;
      expect(piece.lengthM).toBeCloseTo(lengthM + 0.06, 12);
      expect(piece.widthM).toBe(widthM);
      expect(notches.length).toBeGreaterThan(1);
      // Common practice, no source: two cuts so near that no flap stands between them are one cut.
      notches.slice(1).forEach((next, i) => {
        const one = notches[i]!;
        const apartM = Math.hypot(next.toAlongM - one.toAlongM, next.toAcrossM - one.toAcrossM);
        expect(apartM - (one.openM + next.openM) / 2).toBeGreaterThan(0.0149);
      });
      // Common practice, no source: notches at a nose or a tail lie alike on both sides, and none in a curve is wider than two fingers.
      expect(Math.max(...notches.map(({ openM, takesTip }) => (takesTip ? 0 : openM)))).toBeLessThan(0.0401);
      for (const at of ["nose", "tail"] as const) {
        const own = notches.filter((notch) => notch.at === at);
        const acrossM = own.reduce((sumM, notch) => sumM + notch.toAcrossM, 0);
        expect(Math.abs(acrossM) / Math.max(own.length, 1)).toBeLessThan(0.02);
      }
      for (const { alongM, acrossM, toAlongM, toAcrossM } of notches) {
        expect(Math.hypot(toAlongM - alongM, toAcrossM - acrossM)).toBeCloseTo(lapM - 0.01, 9);
      }
    }
  });
});
