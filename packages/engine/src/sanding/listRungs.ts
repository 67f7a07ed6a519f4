import { type Grit, P_GRAIN_M, SAME_GRAIN_SHARE, US_GRAIN_M } from "../constants/abrasives";
import { LADDERS } from "../constants/sandingLadder";
import type { GlassInput } from "../layup/GlassInput";

/** One paper of the ladder, and what it has to take out. */
export interface Rung {
  readonly grit: Grit;
  readonly grainM: number;
  readonly us: string | null;
  readonly on: "fill" | "gloss";
  readonly wet: boolean;
  readonly onEdges: boolean;
  /** Grain of the paper before on the same coat; null for the one that levels the coat. */
  readonly beforeM: number | null;
}

/**
 * The builder's own papers or the usual ones of the finish, coarse to fine. On the fill coat rails and ends begin with the second, whose
 * first work is to level them.
 */
export function listRungs({
  finish = "sanded",
  papers,
}: Pick<GlassInput, "finish" | "papers"> = {}): readonly Rung[] {
  const usual = LADDERS[finish];
  const dry = papers?.dry ?? usual.dry;
  const wet = finish === "sanded" ? usual.wet : (papers?.wet ?? usual.wet);
  const isGloss = finish === "gloss";
  const all: ReadonlyArray<readonly [grit: Grit, wet: boolean]> = [
    ...dry.map((grit) => [grit, false] as const),
    ...wet.map((grit) => [grit, true] as const),
  ];
  return all.map(([grit, isWet], i): Rung => {
    const before = all[i - 1];
    const levels = before === undefined || (isGloss && isWet && !before[1]);
    return {
      grit,
      grainM: P_GRAIN_M[grit].value,
      us: nameUsGrade(P_GRAIN_M[grit].value),
      on: isGloss && isWet ? "gloss" : "fill",
      wet: isWet,
      onEdges: i > 0 || all.length === 1,
      beforeM: levels ? null : P_GRAIN_M[before[0]].value,
    };
  });
}

/** The US grade whose grain is nearest, where it is near enough to stand for it. */
function nameUsGrade(grainM: number): string | null {
  const off = (usM: number) => Math.abs(usM / grainM - 1);
  const [name, grain] = Object.entries(US_GRAIN_M).reduce((best, next) =>
    off(next[1].value) < off(best[1].value) ? next : best,
  );
  return off(grain.value) <= SAME_GRAIN_SHARE.value ? name : null;
}
