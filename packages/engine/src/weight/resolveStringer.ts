import type { Sourced } from "../constants/Sourced";
import { DEFAULT_WOOD, MOST_STRINGER_M, USUAL_STRINGER_M, WOODS } from "../constants/woods";
import { listNearest } from "../foundation/findNearest";
import { say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import { quoteText } from "../foundation/quoteText";
import { finding, type Stage } from "../foundation/stage";
import type { BlankInput } from "../layup/GlassInput";
import { listWoods } from "../materials/listBlanks";
import type { MaterialsInput } from "../materials/MaterialsInput";
import { assume } from "../sources/assume";

export interface Stringer {
  readonly thicknessM: number;
  readonly woodDensityKgM3: Sourced;
}

/** Thickness and wood of the stringer; none given means none in the board, and the plan says so. */
export function resolveStringer(blank: BlankInput, materials: MaterialsInput | undefined): Stage<Stringer> {
  const woods = listWoods(materials);
  const { stringer } = blank;
  if (stringer === undefined) {
    const none = assume("blank.stringer", say`no stringer`, "the board file names none", "convention");
    return {
      value: { thicknessM: 0, woodDensityKgM3: WOODS[DEFAULT_WOOD]!.densityKgM3 },
      findings: [],
      assumptions: [none],
    };
  }
  const wood = stringer.wood ?? DEFAULT_WOOD;
  if (!Object.hasOwn(woods, wood)) {
    const near = listNearest(wood, Object.keys(woods)).join(", ");
    const says = say`no wood ${quoteText(wood)} is known; the nearest are ${near}`;
    return {
      value: null,
      findings: [finding("blocker", "weight.unknown-wood", "blank.stringer.wood", says)],
      assumptions: [],
    };
  }
  if (!(stringer.thicknessM > 0 && stringer.thicknessM <= MOST_STRINGER_M.value)) {
    const { low, high } = USUAL_STRINGER_M;
    const says = say`a stringer's thickness lies between nought and ${length(MOST_STRINGER_M.value)}; it is usually ${length(low)} to ${length(high)}`;
    return {
      value: null,
      findings: [finding("blocker", "weight.stringer-thickness", "blank.stringer.thickness", says)],
      assumptions: [],
    };
  }
  const taken = assume(
    "blank.stringer.wood",
    say`${WOODS[DEFAULT_WOOD]!.name}`,
    "no wood was named",
    "wood-tables",
  );
  return {
    value: { thicknessM: stringer.thicknessM, woodDensityKgM3: woods[wood]!.densityKgM3 },
    findings: [],
    assumptions: stringer.wood === undefined ? [taken] : [],
  };
}
