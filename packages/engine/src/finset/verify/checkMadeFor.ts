import type { Surface } from "../../constants/finSetting";
import { listPhrases } from "../../foundation/listPhrases";
import { type Phrase, say } from "../../foundation/phrase";
import { angle, length } from "../../foundation/quantity";
import { radFromDegrees } from "../../foundation/units";
import type { MadeFor } from "./MadeFor";

/** Declared conventions: figures that read the same, to a tenth of a millimetre or a fiftieth of a degree, are the same. */
const SAME_M = 1e-4;
const SAME_RAD = radFromDegrees(0.02);

/**
 * Says why a check that was made does not count for the figures of the plan.
 * @param now the figures that the check hangs on; null where it hangs on none
 * @param made the figures that it was made for, where they were given
 * @returns null where it counts
 */
export function checkMadeFor(now: MadeFor | null, made: MadeFor | undefined): Phrase | null {
  if (now === null) return null;
  if (made === undefined || KEYS.some((key) => now[key] !== undefined && made[key] === undefined))
    return say`it is not said what figures it was made for, so it does not count: make it again for these`;
  const changed = [
    ...(made.on !== now.on && made.on !== undefined && now.on !== undefined
      ? [say`${SURFACES[made.on]}, now ${SURFACES[now.on]}`]
      : []),
    ...changedLength(made.lengthM, now.lengthM, (was, is) => say`a pocket ${was} long, now ${is}`),
    ...changedLength(made.widthM, now.widthM, (was, is) => say`a pocket ${was} wide, now ${is}`),
    ...changedLength(made.depthM, now.depthM, (was, is) => say`a pocket ${was} deep, now ${is}`),
    ...changedLength(made.baseM, now.baseM, (was, is) => say`a base of ${was}, now ${is}`),
    ...changedCant(made.cantRad, now.cantRad),
  ];
  return changed.length === 0
    ? null
    : say`it was made for ${listPhrases(changed, "semicolon")}: make it again`;
}

const KEYS = ["on", "lengthM", "widthM", "depthM", "cantRad", "baseM"] as const;

const SURFACES: Readonly<Record<Surface, string>> = {
  foam: "the foam",
  laminate: "the laminate",
  fill: "the fill coat",
};

function changedLength(
  wasM: number | undefined,
  isM: number | undefined,
  words: (was: ReturnType<typeof length>, is: ReturnType<typeof length>) => Phrase,
): readonly Phrase[] {
  if (wasM === undefined || isM === undefined || Math.abs(wasM - isM) <= SAME_M) return [];
  return [words(length(wasM, "fine"), length(isM, "fine"))];
}

function changedCant(wasRad: number | undefined, isRad: number | undefined): readonly Phrase[] {
  if (wasRad === undefined || isRad === undefined || Math.abs(wasRad - isRad) <= SAME_RAD) return [];
  return [say`a cant of ${angle(wasRad)}, now ${angle(isRad)}`];
}
