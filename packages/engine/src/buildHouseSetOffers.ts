import type { Board } from "./Board";
import type { HouseSet } from "./constants/houseSets";
import { type HouseSetOffer, offerHouseSet } from "./finset/offerHouseSet";
import { buildShape } from "./shape/buildShape";
import { buildSurvey } from "./survey/buildSurvey";

/** A house set put on this board in both ways, with what would change on each mark; none where the plan has no shape. */
export function buildHouseSetOffers(
  { survey, fins }: Pick<Board, "survey" | "fins">,
  set: HouseSet,
): readonly HouseSetOffer[] {
  const shape = buildShape(buildSurvey(survey).value).value;
  return shape === null ? [] : offerHouseSet({ set, shape, current: fins });
}
