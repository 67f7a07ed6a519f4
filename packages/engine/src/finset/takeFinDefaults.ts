import { SET_OUT_TOLERANCE } from "../constants/finClearances";
import { say } from "../foundation/phrase";
import type { Assumption } from "../foundation/stage";
import { assume } from "../sources/assume";
import type { FinInput, FinsInput, LeashPlugInput } from "./FinsInput";
import { assumeSetting } from "./verify/assumeSetting";

/** What nobody gave, filled in. */
export interface FinDefaults {
  readonly sides: NonNullable<FinsInput["sides"]>;
  readonly boxes: NonNullable<FinsInput["boxes"]>;
  readonly toleranceM: number;
  readonly assumptions: readonly Assumption[];
}

/** Fills in what the fins' part of a board file leaves out, and says each thing that it took. */
export function takeFinDefaults(fins: FinsInput): FinDefaults {
  const assumptions: Assumption[] = [];
  const take = (given: unknown, assumption: Assumption) => {
    if (given === undefined) assumptions.push(assumption);
  };
  take(
    fins.sides,
    assume(
      "fins.sides",
      say`average`,
      "both sides are measured from their own rail and both fins stand at the mean, so that a board out of true does not turn one fin against the other",
      "common-practice",
    ),
  );
  take(
    fins.boxes,
    assume("fins.boxes", say`after-fill`, "the boxes are set after the fill coat", "common-practice"),
  );
  take(
    fins.fromTailBy,
    assume(
      "fins.fromTailBy",
      say`tape`,
      "distances from the tail are read with a tape along the bottom",
      "convention",
    ),
  );
  take(
    fins.fromTailOf,
    assume("fins.fromTailOf", say`tips`, "and from a straightedge across the tail tips", "convention"),
  );
  take(
    fins.toleranceM,
    assume("fins.tolerance", say`1 mm`, "a careful set-out is held to about a millimetre", "common-practice"),
  );
  fins.set.forEach((fin, i) => {
    assumptions.push(...assumeOfFin(fin, `fins.set[${i}]`));
  });
  if (fins.set.some(({ fromRailM }) => fromRailM !== undefined))
    assumptions.push(
      assume(
        "finset.marks[].bottomTiltRad",
        say`the section curve`,
        "the bottom's slope under the cant gauge is that of the section's curve, which cannot draw a tucked edge: near the rail it slopes more than a bottom that is flat to its edge, and the true cant with it",
        "convention",
      ),
    );
  if (fins.leashPlug !== undefined) assumptions.push(...assumeOfPlug(fins.leashPlug));
  assumptions.push(...assumeSetting(fins, fins.boxes ?? "after-fill"));
  return {
    sides: fins.sides ?? "average",
    boxes: fins.boxes ?? "after-fill",
    toleranceM: fins.toleranceM ?? SET_OUT_TOLERANCE.markM,
    assumptions,
  };
}

function assumeOfFin(fin: FinInput, path: string): readonly Assumption[] {
  const isPair = fin.fromRailM !== undefined;
  const assumptions: Assumption[] = [];
  if (isPair && fin.fromRailBy === undefined)
    assumptions.push(
      assume(
        `${path}.fromRailBy`,
        say`square-to-centreline`,
        "the distance from the rail is read square to the centreline",
        "convention",
      ),
    );
  if (isPair && fin.toe === undefined)
    assumptions.push(
      assume(`${path}.toe`, say`0°`, "no toe is given, so the fin stands along the centreline", "convention"),
    );
  if (isPair && fin.cantRad === undefined)
    assumptions.push(
      assume(
        `${path}.cant`,
        say`0°`,
        "no cant is given, so the fin stands square to the bottom",
        "convention",
      ),
    );
  if (fin.box !== undefined && fin.box.behindTrailingM === undefined)
    assumptions.push(
      assume(
        `${path}.box.behindTrailing`,
        say`centred`,
        "how far the box reaches behind the mark is not given, so the base stands in its middle",
        "convention",
      ),
    );
  return assumptions;
}

function assumeOfPlug(plug: LeashPlugInput): readonly Assumption[] {
  if (plug.side !== undefined) return [];
  return [assume("fins.leashPlug.side", say`left`, "the leash plug's side is not given", "convention")];
}
