import type { Board } from "@lapline/engine";
import { buildCalendar } from "../../packages/engine/src/calendar/buildCalendar";
import { buildCost } from "../../packages/engine/src/cost/buildCost";
import { buildCutplan } from "../../packages/engine/src/cutplan/buildCutplan";
import { buildFinset } from "../../packages/engine/src/finset/buildFinset";
import { buildLayup } from "../../packages/engine/src/layup/buildLayup";
import { buildMix } from "../../packages/engine/src/mix/buildMix";
import { planDays } from "../../packages/engine/src/planDays";
import { buildLadder } from "../../packages/engine/src/sanding/buildLadder";
import { buildSanding } from "../../packages/engine/src/sanding/buildSanding";
import { buildShape } from "../../packages/engine/src/shape/buildShape";
import { computeSkin } from "../../packages/engine/src/shape/computeSkin";
import { computeSolid } from "../../packages/engine/src/shape/computeSolid";
import { fitOutline } from "../../packages/engine/src/shape/fitOutline";
import { fitThickness } from "../../packages/engine/src/shape/fitThickness";
import { SurveyedShape } from "../../packages/engine/src/shape/SurveyedShape";
import { buildRepairs } from "../../packages/engine/src/steps/buildRepairs";
import { buildSteps } from "../../packages/engine/src/steps/buildSteps";
import { buildWater } from "../../packages/engine/src/steps/buildWater";
import { layRepairs } from "../../packages/engine/src/steps/layRepairs";
import { buildSurvey } from "../../packages/engine/src/survey/buildSurvey";
import { buildWeight } from "../../packages/engine/src/weight/buildWeight";
import { compareByWeight } from "../../packages/engine/src/weight/compareByWeight";
import { buildWeighins } from "../../packages/engine/src/weight/weighin/buildWeighins";

/** The fit and the quadrature by themselves, then each stage with what the others hand it. */
export function listParts(board: Board): Readonly<Record<string, () => unknown>> {
  const survey = buildSurvey(board.survey).value;
  if (survey === null) throw new Error(`${board.name}: no survey`);
  const fitShape = () => {
    const [outline, thickness] = [fitOutline(survey), fitThickness(survey)];
    if (outline === null || thickness === null) throw new Error(`${board.name}: no fit`);
    return new SurveyedShape(survey, outline.curve, thickness);
  };
  const solid = fitShape();
  const shape = buildShape(survey).value;
  const finset = buildFinset(board.fins, shape).value;
  const layup = buildLayup(board, shape).value;
  const ladder = buildLadder(board, layup).value;
  const days = { shape: shape?.plan ?? null, finset, layup, ladder };
  const { mix, steps, calendar } = planDays(board, days);
  const cutplan = buildCutplan(board, layup).value;
  const weight = buildWeight(board, shape, layup).value;
  return {
    fit: fitShape,
    quadrature: () => [computeSolid(solid), computeSkin(solid)],
    survey: () => buildSurvey(board.survey),
    shape: () => buildShape(survey),
    finset: () => buildFinset(board.fins, shape),
    layup: () => buildLayup(board, shape),
    cutplan: () => buildCutplan(board, layup),
    weight: () => [compareByWeight(board, shape), buildWeight(board, shape, layup)],
    days: () => planDays(board, days),
    "of it mix": () => buildMix(board, layup),
    "of it steps": () => buildSteps(board, { finset, layup, mix: mix.value, ladder }),
    "of it calendar": () => buildCalendar(board, { steps: steps.value, layup, mix: mix.value }),
    weighins: () => buildWeighins(board, { layup, weight, steps: steps.value }),
    sanding: () => [buildLadder(board, layup), buildSanding(board, { shape, layup, ladder, weighed: [] })],
    cost: () => buildCost(board, { layup, mix: mix.value, cutplan }),
    rest: () => [
      buildRepairs(board, { laid: layup && layRepairs(board, layup), mix: mix.value, steps: steps.value }),
      buildWater(board, steps.value, calendar.value),
    ],
  };
}
