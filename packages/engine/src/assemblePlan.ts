import type { Board } from "./Board";
import type { CalendarEntry } from "./calendar/CalendarPlan";
import type { CostPlan } from "./cost/CostPlan";
import type { CutPlan } from "./cutplan/CutPlan";
import type { FinsetPlan } from "./finset/FinsetPlan";
import { type Assumption, type Finding, finding, type Severity, type Stage } from "./foundation/stage";
import type { LayupPlan } from "./layup/LayupPlan";
import type { MixPlan } from "./mix/MixPlan";
import type { Plan } from "./Plan";
import type { BoardShape } from "./shape/BoardShape";
import type { StepPlan, WaterPlan } from "./steps/StepsPlan";
import type { Survey } from "./survey/Survey";
import { ENGINE_VERSION } from "./version";
import type { ByWeightPlan } from "./weight/compareByWeight";
import type { WeightPlan } from "./weight/WeightPlan";
import type { WeighinsPlan } from "./weight/weighin/WeighinsPlan";

interface Stages {
  readonly survey: Stage<Survey>;
  readonly shape: Stage<BoardShape>;
  readonly finset: Stage<FinsetPlan>;
  readonly layup: Stage<LayupPlan>;
  readonly cutplan: Stage<CutPlan>;
  readonly mix: Stage<MixPlan>;
  readonly byWeight: Stage<ByWeightPlan>;
  readonly weight: Stage<WeightPlan>;
  readonly weighins: Stage<WeighinsPlan>;
  readonly cost: Stage<CostPlan>;
  readonly steps: Stage<readonly StepPlan[]>;
  readonly calendar: Stage<readonly CalendarEntry[]>;
  /** Always said, if only that nothing is known yet. */
  readonly water: Stage<WaterPlan> & { readonly value: WaterPlan };
}

const ORDER: readonly Severity[] = ["blocker", "warning", "note"];

/** Parts of the plan that no stage builds yet, each with what a builder does meanwhile. */
const NOT_BUILT: ReadonlyArray<readonly [path: string, words: string]> = [
  ["sanding", "the film budget is not reckoned yet: stop when the shine is gone and the weave does not show"],
];

/** Puts the stages' results into one plan: values as they are, findings with blockers first, assumptions in order. */
export function assemblePlan(board: Board, stages: Stages): Plan {
  const all = Object.values(stages) as ReadonlyArray<Stage<unknown>>;
  const findings: Finding[] = [
    ...all.flatMap((stage) => stage.findings),
    ...NOT_BUILT.map(([path, words]) => finding("note", `${path}.not-built`, path, [words])),
  ];
  const assumptions: readonly Assumption[] = all.flatMap((stage) => stage.assumptions);
  return {
    format: "lapline-plan/1",
    engine: ENGINE_VERSION,
    name: board.name,
    shape: stages.shape.value?.plan ?? null,
    finset: stages.finset.value,
    layup: stages.layup.value,
    cutplan: stages.cutplan.value,
    mix: stages.mix.value,
    sanding: null,
    byWeight: stages.byWeight.value,
    weight: stages.weight.value,
    weighins: stages.weighins.value,
    cost: stages.cost.value,
    steps: stages.steps.value,
    calendar: stages.calendar.value,
    water: stages.water.value,
    findings: ORDER.flatMap((severity) => findings.filter((f) => f.severity === severity)),
    assumptions,
  };
}
