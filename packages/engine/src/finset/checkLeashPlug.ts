import { PLUG_CLEARANCES } from "../constants/finClearances";
import { type Phrase, say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import { type Finding, finding, type Severity } from "../foundation/stage";
import type { LeashPlugPlan } from "./FinsetPlan";

/** Finds where the leash plug has too little room, with the figure and the change that would cure it. */
export function checkLeashPlug(plug: LeashPlugPlan): readonly Finding[] {
  const least = PLUG_CLEARANCES;
  const findings: Finding[] = [];
  const make = (severity: Severity, code: string, says: Phrase) =>
    findings.push(finding(severity, code, "fins.leashPlug", says));
  const { foamUnderM, toBoxM, toRailM, toStringerM } = plug;
  if (foamUnderM !== null && foamUnderM <= 0)
    make(
      "blocker",
      "finset.plug-too-deep",
      say`the leash plug is ${length(plug.depthM ?? 0)} deep and would come out of the bottom by ${length(-foamUnderM)}: use a shallower one, or set it farther up the board`,
    );
  else if (foamUnderM !== null && foamUnderM < least.foamUnderM)
    make(
      "warning",
      "finset.plug-foam",
      say`only ${length(foamUnderM)} of foam is left under the leash plug, where ${length(least.foamUnderM)} is common practice: set it farther up the board, or use a shallower one`,
    );
  if (toBoxM !== null && toBoxM <= 0)
    make(
      "blocker",
      "finset.plug-in-box",
      say`the leash plug runs into the ${plug.box ?? ""} fin's box beneath it: move the plug along the board or to the other side`,
    );
  else if (toBoxM !== null && toBoxM < least.toBoxM)
    make(
      "warning",
      "finset.plug-to-box",
      say`only ${length(toBoxM)} is left between the leash plug and the ${plug.box ?? ""} fin's box, where ${length(least.toBoxM)} is common practice: move the plug ${length(least.toBoxM - toBoxM, "fine")} away`,
    );
  if (toRailM < least.toRailM)
    make(
      "warning",
      "finset.plug-to-rail",
      say`the leash plug comes within ${length(toRailM)} of the rail, where ${length(least.toRailM)} is common practice: move it ${length(least.toRailM - toRailM, "fine")} inward`,
    );
  if (toStringerM !== null && toStringerM < least.toStringerM)
    make(
      "warning",
      "finset.plug-to-stringer",
      say`the leash plug comes within ${length(toStringerM)} of the middle of the stringer: its hole would cut the stringer, so move it ${length(least.toStringerM - toStringerM, "fine")} out`,
    );
  return findings;
}
