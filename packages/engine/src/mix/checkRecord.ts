import { say } from "../foundation/phrase";
import { type Finding, finding } from "../foundation/stage";
import type { MixEntry } from "./MixEntry";
import type { MixCoatPlan } from "./MixPlan";

/** Fingertip tests that can move no clock, because nothing says when the coat's cups were mixed. */
export function checkRecord(record: readonly MixEntry[], coats: readonly MixCoatPlan[]): Finding[] {
  const planned = new Map(coats.map((coat) => [coat.id, coat]));
  return record.flatMap((entry) => {
    if (entry.kind !== "touched") return [];
    const coat = planned.get(entry.coat);
    if (coat === undefined || coat.clock === null || coat.startedAt !== null) return [];
    const says = say`the fingertip test of ${entry.coat} moves no clock: the record needs the cup of that coat with its time, and the shop's air of that time`;
    return [finding("note", "mix.untimed-touch", `record[${entry.id}]`, says)];
  });
}
