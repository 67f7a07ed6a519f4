import { say } from "../foundation/phrase";
import { fraction, length } from "../foundation/quantity";
import { type Finding, finding } from "../foundation/stage";
import { nameZone } from "./nameZone";
import type { SandingPlan } from "./SandingPlan";

/** Where the hand goes through first, said once; and where a smoother finish gains no speed. */
export function checkSanding({
  zones,
  grits,
  worst,
  enoughFrom,
  admissibleRoughnessM,
}: SandingPlan): Finding[] {
  const first = zones.find(({ rank }) => rank === 1);
  const findings: Finding[] = [];
  if (first !== undefined && first.risk !== "enough") {
    const chance = say`${nameZone(first.id)} goes through first: ${length(first.filmM)} of film, ${length(first.takenM)} taken by the papers, gone in ${fraction(first.throughShare)} of boards like this one`;
    const says =
      first.risk === "through"
        ? say`${chance}; lay a second fill coat there, or begin with a finer paper and stop while shine is left in the low spots`
        : say`${chance}; go over it last, by hand, and stop while shine is left in the low spots`;
    const path = `sanding.zones[${first.id}]`;
    findings.push(finding(first.risk === "through" ? "warning" : "note", "sanding.thin", path, says));
  }
  if (worst !== null && worst.remainingM < 0) {
    const says = say`the ${worst.side} rail, ${length(worst.fromTailM, "coarse")} from the tail, has ${length(-worst.remainingM)} less film than the papers take`;
    findings.push(finding("warning", "sanding.rail", "sanding.worst", says));
  }
  if (grits.some(({ grainM }) => grainM < admissibleRoughnessM)) {
    const says = say`papers finer than ${enoughFrom} gain no speed by the book (roughness of ${length(admissibleRoughnessM)} in salt water); measured plates still found fine sanding above polished, so nothing here says that sanding beats polish`;
    findings.push(finding("note", "sanding.smooth-enough", "sanding.enoughFrom", says));
  }
  return findings;
}
