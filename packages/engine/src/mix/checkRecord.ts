import { GEL_BAND } from "../constants/gelBand";
import { findNearest } from "../foundation/findNearest";
import { say } from "../foundation/phrase";
import { duration, fraction } from "../foundation/quantity";
import { quoteText } from "../foundation/quoteText";
import { type Finding, finding } from "../foundation/stage";
import type { MixEntry } from "./MixEntry";
import type { MixCoatPlan } from "./MixPlan";
import { sortTouches } from "./sortTouches";
import { parseWallTimeS } from "./wallTime";

/** Entries of a coat that is not there, fingertip tests that can move no clock or contradict each other, and such that move it so far that something was misread. */
export function checkRecord(record: readonly MixEntry[], coats: readonly MixCoatPlan[]): Finding[] {
  return [
    ...checkUnknown(record, coats),
    ...checkUntimed(record, coats),
    ...coats.flatMap((coat) => checkTouches(record, coat)),
    ...checkPace(coats),
  ];
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

/** Patches of a repair have cups of their own, and no clock here. */
const REPAIR = "repair-";

function checkUnknown(record: readonly MixEntry[], coats: readonly MixCoatPlan[]): Finding[] {
  const ids = coats.map(({ id }) => id);
  return record.flatMap((entry) => {
    if (entry.kind !== "mixed" && entry.kind !== "touched") return [];
    if (ids.includes(entry.coat) || entry.coat.startsWith(REPAIR)) return [];
    const nearest = findNearest(entry.coat, ids);
    const says =
      nearest === null
        ? say`the record names the coat ${quoteText(entry.coat)}, and this board has no such coat: the entry moves no clock`
        : say`the record names the coat ${quoteText(entry.coat)}, and this board has no such coat: the entry moves no clock; was it ${quoteText(nearest)}?`;
    return [finding("warning", "mix.unknown-coat", `record[${entry.id}].coat`, says)];
  });
}

function checkTouches(record: readonly MixEntry[], coat: MixCoatPlan): Finding[] {
  const startedS = coat.startedAt === null ? null : parseWallTimeS(coat.startedAt);
  const touched = record
    .filter((entry) => entry.kind === "touched")
    .filter((entry) => entry.coat === coat.id);
  const { kept, dropped } = sortTouches(touched);
  const backwards = dropped.map(({ touch, by }) => {
    const says = say`two fingertip tests of ${coat.id} contradict each other, for a film only gets harder: ${touch.entry.id} and ${by.entry.id}; the one entered later counts, and the other moves no clock; correct whichever is wrong`;
    return finding("warning", "mix.touch-backwards", `record[${touch.entry.id}].feels`, says);
  });
  const early = kept.flatMap(({ entry, wallS }) => {
    if (startedS === null || wallS > startedS) return [];
    const says = say`the fingertip test of ${coat.id} lies ${duration(startedS - wallS)} before its last cup was mixed, so it moves no clock: correct its time or the cup's`;
    return [finding("warning", "mix.touch-early", `record[${entry.id}].at`, says)];
  });
  return [...backwards, ...early];
}
