import type { Board } from "./Board";
import type { CalendarEntry } from "./calendar/CalendarPlan";
import type { CostPlan } from "./cost/CostPlan";
import type { CutPlan } from "./cutplan/CutPlan";
import type { FinsetPlan } from "./finset/FinsetPlan";
import type { Assumption, Finding, Severity, Stage } from "./foundation/stage";
import type { LayupPlan } from "./layup/LayupPlan";
import type { MixPlan } from "./mix/MixPlan";
import type { Plan } from "./Plan";
import type { LadderPlan } from "./sanding/LadderPlan";
import type { SandingPlan } from "./sanding/SandingPlan";
import type { BoardShape } from "./shape/BoardShape";
import type { RepairPlan } from "./steps/RepairPlan";
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
  readonly ladder: Stage<LadderPlan>;
  readonly sanding: Stage<SandingPlan>;
  readonly byWeight: Stage<ByWeightPlan>;
  readonly weight: Stage<WeightPlan>;
  readonly weighins: Stage<WeighinsPlan>;
  readonly cost: Stage<CostPlan>;
  readonly steps: Stage<readonly StepPlan[]>;
  readonly repairs: Stage<readonly RepairPlan[]>;
  readonly calendar: Stage<readonly CalendarEntry[]>;
  /** Always said, if only that nothing is known yet. */
  readonly water: Stage<WaterPlan> & { readonly value: WaterPlan };
}

const ORDER: readonly Severity[] = ["blocker", "warning", "note"];

/** Puts the stages' results into one plan: values as they are, findings with blockers first, assumptions in order. */
export function assemblePlan(board: Board, stages: Stages): Plan {
  const all = Object.values(stages) as ReadonlyArray<Stage<unknown>>;
  const findings: readonly Finding[] = all.flatMap((stage) => stage.findings);
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
    sanding: stages.sanding.value,
    byWeight: stages.byWeight.value,
    weight: stages.weight.value,
    weighins: stages.weighins.value,
    cost: stages.cost.value,
    steps: stages.steps.value,
    repairs: stages.repairs.value,
    calendar: stages.calendar.value,
    water: stages.water.value,
    findings: ORDER.flatMap((severity) => findings.filter((f) => f.severity === severity)),
    assumptions,
  };
}
