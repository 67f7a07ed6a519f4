import { GEL_BAND } from "../constants/gelBand";
import { say } from "../foundation/phrase";
import { fraction } from "../foundation/quantity";
import { type Finding, finding } from "../foundation/stage";
import type { MixEntry } from "./MixEntry";
import type { MixCoatPlan } from "./MixPlan";

/** Fingertip tests that can move no clock, and such that move it so far that something was misread. */
export function checkRecord(record: readonly MixEntry[], coats: readonly MixCoatPlan[]): Finding[] {
  return [...checkUntimed(record, coats), ...checkPace(coats)];
}

function checkPace(coats: readonly MixCoatPlan[]): Finding[] {
  const far = GEL_BAND.farPaceRatio.value;
  return coats.flatMap(({ id, paceRatio }) => {
    if (paceRatio === null || (paceRatio < far && paceRatio > 1 / far)) return [];
    const says = say`the fingertips say that ${id} takes ${fraction(paceRatio)} of the model's time, further off than resins differ: look at the dose that was weighed, the shop's temperature and the times in the record`;
    return [finding("warning", "mix.far-pace", `mix.coats[${id}].paceRatio`, says)];
  });
}

function checkUntimed(record: readonly MixEntry[], coats: readonly MixCoatPlan[]): Finding[] {
  const planned = new Map(coats.map((coat) => [coat.id, coat]));
  return record.flatMap((entry) => {
    if (entry.kind !== "touched") return [];
    const coat = planned.get(entry.coat);
    if (coat === undefined || coat.clock === null || coat.startedAt !== null) return [];
    const says = say`the fingertip test of ${entry.coat} moves no clock: the record needs the cup of that coat with its time, and the shop's air of that time`;
    return [finding("note", "mix.untimed-touch", `record[${entry.id}]`, says)];
  });
}
