import { type Phrase, say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import { type Finding, finding } from "../foundation/stage";
import type { SymmetryPlan } from "../shape/ShapePlan";
import type { FilledFins } from "./FilledFins";
import type { OwnRails } from "./FinSpot";
import type { SidesComparedPlan } from "./FinsetPlan";
import type { SidesRule } from "./FinsInput";

export interface Recommended {
  readonly sides: SidesRule;
  readonly says: Phrase;
}

/**
 * Gives the rule for the two sides that suits the board, with the reason, from the size and the kind of what is out of true.
 *
 * Under the tolerance all rules come to the same. Where the sides agree much better about the best-fit centreline than
 * about the stringer, and the two lines differ by more than their own band, the stringer is what is off; otherwise the outline
 * is, or the readings cannot tell, and the average shares the error out. Each side by its own rail is never recommended, since it turns the one fin
 * against the other. A declared convention of this program.
 */
export function recommendSides(
  compared: readonly SidesComparedPlan[],
  symmetry: SymmetryPlan,
  toleranceM: number,
): Recommended {
  const outM = (rule: SidesRule) => compared.find(({ id }) => id === rule)?.asymmetryM ?? 0;
  const stringerOutM = outM("average");
  const centreOutM = outM("centreline");
  if (stringerOutM <= toleranceM)
    return {
      sides: "average",
      says: say`the two sides agree within ${length(stringerOutM, "fine")} at the fins, so all three rules come to the same; average keeps both fins equally far from the stringer`,
    };
  const isOffStringer = centreOutM < stringerOutM / 2;
  if (isOffStringer && isStringerOff(symmetry))
    return {
      sides: "centreline",
      says: say`the sides differ by ${length(stringerOutM, "fine")} at the fins about the stringer, but only by ${length(centreOutM, "fine")} about the best-fit centreline: the stringer is off, or bowed, so set the fins out about the best-fit line`,
    };
  if (isOffStringer)
    return {
      sides: "average",
      says: say`the sides differ by ${length(stringerOutM, "fine")} at the fins, and by ${length(centreOutM, "fine")} about the best-fit centreline, but the readings cannot tell that line from the stringer: average shares the difference out; more stations on both sides would tell`,
    };
  return {
    sides: "average",
    says: say`the sides differ by ${length(stringerOutM, "fine")} at the fins, and by ${length(centreOutM, "fine")} about the best-fit centreline: the outline is fuller on one side, so average shares it out and keeps both fins true to the stringer; by its own rail each fin would stand and point differently`,
  };
}

const clearOfNought = (low: number, high: number) => low > 0 || high < 0;

const isStringerOff = (symmetry: SymmetryPlan) =>
  clearOfNought(symmetry.centrelineShiftLowM, symmetry.centrelineShiftHighM) ||
  clearOfNought(symmetry.centrelineSkewLowRad, symmetry.centrelineSkewHighRad);

/** Says the recommendation, and warns where the rule in force is another one and the difference can be seen. */
export function checkRule(
  { sides, toleranceM }: Pick<FilledFins, "sides" | "toleranceM">,
  recommended: Recommended,
  ownRails: readonly OwnRails[],
): readonly Finding[] {
  if (ownRails.length === 0) return [];
  const matters = ownRails.some(({ leftM, rightM }) => Math.abs(leftM - rightM) > toleranceM);
  const severity = sides !== recommended.sides && matters ? "warning" : "note";
  return [
    finding(severity, "finset.sides-recommended", "fins.sides", [
      ...(severity === "warning"
        ? [`the set is laid out by "${sides}"; "${recommended.sides}" suits this board better: `]
        : []),
      ...recommended.says,
    ]),
  ];
}
