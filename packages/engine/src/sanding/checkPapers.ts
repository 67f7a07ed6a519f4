import { GRITS, type Grit, P_GRAIN_M } from "../constants/abrasives";
import { COARSEST_END, FINEST_START, GRAIN_FALL_MOST } from "../constants/sandingLadder";
import { say } from "../foundation/phrase";
import { type Finding, finding } from "../foundation/stage";
import type { GlassInput } from "../layup/GlassInput";
import type { Rung } from "./listRungs";

/**
 * What is wrong with papers that the builder chose: none of them, or not from coarse to fine, which is refused; a step so wide that the
 * scratches of the one before stay; wet papers that the finish does not call for; a first that levels too slowly, a last too coarse.
 * Common practice, no source.
 */
export function checkPapers(glass: GlassInput | undefined, rungs: readonly Rung[]): Finding[] {
  if (glass?.papers === undefined) return [];
  const refused = checkOrder(rungs);
  if (refused.length > 0) return refused;
  return [...checkJumps(rungs), ...checkWet(glass), ...checkEnds(glass, rungs)];
}

const PATH = "glass.papers";

function checkOrder(rungs: readonly Rung[]): Finding[] {
  if (!rungs.some(({ on }) => on === "fill")) {
    const says = say`no dry paper is named: the fill coat is sanded with at least one`;
    return [finding("blocker", "sanding.papers", PATH, says)];
  }
  return rungs.flatMap((rung, i) => {
    const before = rungs[i - 1];
    if (before === undefined || before.on !== rung.on || before.grainM > rung.grainM) return [];
    const says = say`${rung.grit} comes after ${before.grit}, and papers go from coarse to fine: put them in order, each once`;
    return [finding("blocker", "sanding.papers", PATH, says)];
  });
}

function checkJumps(rungs: readonly Rung[]): Finding[] {
  return rungs.flatMap((rung, i) => {
    const before = rungs[i - 1];
    if (before === undefined || before.on !== rung.on) return [];
    if (before.grainM / rung.grainM <= GRAIN_FALL_MOST.value) return [];
    const says = say`from ${before.grit} straight to ${rung.grit} the scratches of ${before.grit} stay: the grain falls to less than half; put ${between(before.grainM, rung.grainM)} between them`;
    return [finding("warning", "sanding.jump", PATH, says)];
  });
}

/** The grade nearest to the middle of two, by ratio. */
function between(coarseM: number, fineM: number): Grit {
  const middleM = Math.sqrt(coarseM * fineM);
  const off = (grit: Grit) => Math.abs(Math.log(P_GRAIN_M[grit].value / middleM));
  return GRITS.reduce((best, grit) => (off(grit) < off(best) ? grit : best));
}

function checkWet({ finish, papers }: GlassInput): Finding[] {
  const wet = papers?.wet ?? [];
  if (wet.length === 0 || finish === "wet-sanded" || finish === "gloss") return [];
  const says = say`wet papers are for a wet-sanded or a gloss finish, and this board is only sanded: they are left out`;
  return [finding("warning", "sanding.wet-unused", PATH, says)];
}

function checkEnds({ finish }: GlassInput, rungs: readonly Rung[]): Finding[] {
  const [first, last] = [rungs[0], rungs.at(-1)];
  const findings: Finding[] = [];
  if (first !== undefined && first.grainM < P_GRAIN_M[FINEST_START].value) {
    const says = say`it begins with ${first.grit}: levelling the coat with so fine a paper takes several times as long, which the times here do not count`;
    findings.push(finding("note", "sanding.fine-start", PATH, says));
  }
  if (
    last !== undefined &&
    last.grainM > P_GRAIN_M[COARSEST_END].value &&
    (finish ?? "sanded") === "sanded"
  ) {
    const says = say`it ends with ${last.grit}: a sanded board usually ends at ${COARSEST_END} or finer, and coarser scratches drag and hold dirt`;
    findings.push(finding("note", "sanding.coarse-end", PATH, says));
  }
  return findings;
}
