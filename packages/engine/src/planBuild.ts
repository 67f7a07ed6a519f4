import { assemblePlan } from "./assemblePlan";
import type { Board } from "./Board";
import { buildCost } from "./cost/buildCost";
import { buildCutplan } from "./cutplan/buildCutplan";
import { buildFinset } from "./finset/buildFinset";
import { buildLayup } from "./layup/buildLayup";
import type { Plan } from "./Plan";
import { planDays } from "./planDays";
import { buildLadder } from "./sanding/buildLadder";
import { buildSanding } from "./sanding/buildSanding";
import { buildShape } from "./shape/buildShape";
import { buildRepairs } from "./steps/buildRepairs";
import { buildWater } from "./steps/buildWater";
import { layRepairs, withRepairs } from "./steps/layRepairs";
import { buildSurvey } from "./survey/buildSurvey";
import { buildWeight } from "./weight/buildWeight";
import { compareByWeight } from "./weight/compareByWeight";
import { buildWeighins } from "./weight/weighin/buildWeighins";
import { takeWeighedFilm } from "./weight/weighin/takeWeighedFilm";

/**
 * Turns what was measured and chosen into the whole plan. Pure: no clock, file, network or random source, and the board
 * is left as it was.
 */
export function planBuild(board: Board): Plan {
  const survey = buildSurvey(board.survey);
  const shape = buildShape(survey.value);
  const finset = buildFinset(board.fins, shape.value);
  const planned = buildLayup(board, shape.value);
  const mended = planned.value === null ? null : layRepairs(board, planned.value);
  const patches = mended?.flatMap(({ layers }) => layers);
  const cutplan = buildCutplan(board, planned.value, patches);
  const byWeight = compareByWeight(board, shape.value);
  const weight = buildWeight(board, shape.value, planned.value);
  const ladder = buildLadder(board, planned.value);
  const laid = withRepairs(planned.value, mended);
  const { mix, steps, calendar } = planDays(board, {
    shape: shape.value?.plan ?? null,
    finset: finset.value,
    layup: laid,
    ladder: ladder.value,
  });
  const repairs = buildRepairs(board, { laid: mended, mix: mix.value, steps: steps.value });
  const weighins = buildWeighins(board, { layup: planned.value, weight: weight.value, steps: steps.value });
  const layup = takeWeighedFilm(planned, weighins.value);
  const sanding = buildSanding(board, {
    shape: shape.value,
    layup: layup.value,
    ladder: ladder.value,
    weighed: weighins.value?.zones.map(({ id }) => id) ?? [],
  });
  const cost = buildCost(board, { layup: laid, mix: mix.value, cutplan: cutplan.value });
  const water = buildWater(board, steps.value, calendar.value);
  return assemblePlan(board, {
    survey,
    shape,
    finset,
    layup,
    cutplan,
    mix,
    ladder,
    sanding,
    byWeight,
    weight,
    weighins,
    cost,
    steps,
    repairs,
    calendar,
    water,
  });
}
