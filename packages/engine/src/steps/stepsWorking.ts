import { CURE_BEFORE_LOAD_S } from "../constants/finSetting";
import { DRY_OUT_S, EXPERIENCE, STEP_WORK } from "../constants/workTimes";
import { formatQuantity } from "../foundation/formatQuantity";
import { say } from "../foundation/phrase";
import { area, duration } from "../foundation/quantity";
import type { WorkingInput, WorkingTable } from "../foundation/stage";
import type { LayupPlan } from "../layup/LayupPlan";
import { crewOf } from "../mix/crewOf";
import type { MixPlan } from "../mix/MixPlan";
import type { LadderPlan } from "../sanding/LadderPlan";
import { readChoices } from "./Choices";
import { readRecord } from "./readRecord";
import type { StepRow } from "./StepRow";
import type { StepsInput } from "./StepsInput";
import type { StepPlan } from "./StepsPlan";
import { chooseRows } from "./stepTable";

/** What `why` hands the steps' working: the plan and the board file it came from. */
export interface StepsContext {
  readonly plan: {
    readonly steps: readonly StepPlan[] | null;
    readonly layup: LayupPlan | null;
    readonly mix: MixPlan | null;
    readonly sanding?: LadderPlan | null;
  };
  readonly board: StepsInput;
}

/** How each number of the steps comes about, keyed by its path in the plan. */
export const stepsWorking: WorkingTable<StepsContext> = {
  "steps[].handsOnS": {
    words:
      "time for the hands: a coat's cups mixed and spread one after the other, sanding by its papers, other work by kind, faces and practice",
    formula:
      "Σ time to spread the cups, or the papers' time as in sanding.work, or practice × (fixed + per m² × area)",
    sources: ["common-practice"],
    inputs: listHandsOn,
  },
  "steps[].waitS": {
    words:
      "after the hands are off, until the first of the steps that follow may begin; at the cure-out what the slowest coat still lacks",
    formula:
      "least of the waits that the steps which need this one ask; cure-out: longest (coat's end + full, or no load) − longest way here",
    sources: ["common-practice", "convention"],
    inputs: (context, [id]) =>
      context.plan.steps?.flatMap((step) =>
        step.needs
          .filter((need) => need.step === id)
          .map(
            (need): WorkingInput => ({
              name: say`${step.id} asks ${need.until}`,
              value: waitText(need.waitS),
            }),
          ),
      ) ?? [],
  },
  "steps[].noLoadS": {
    words:
      "how long a box, a fin's base or the leash plug bears no load once the hands are off it; the resin's sheet goes before it where that asks for longer",
    formula: "later of the usual day and the resin's full cure",
    sources: ["common-practice"],
    inputs: ({ plan, board }, [id]) => {
      const labour = rowOf(board, plan.layup, id)?.labour;
      const coat = plan.mix?.coats.find((each) => labour?.kind === "coat" && each.id === labour.coat);
      return [
        { name: "usual, before load", value: duration(CURE_BEFORE_LOAD_S.value) },
        { name: "full cure", value: waitText(coat?.clock?.fullS ?? null) },
      ];
    },
  },
  "steps[].needs[].waitS": {
    words: "how long after that step's hands are off this one may begin",
    formula: say`trim, flip, recoat or sandable of that step's coat from the mix; ${formatQuantity(duration(DRY_OUT_S.value), "mm")} for bare foam to dry; else nought`,
    sources: ["common-practice"],
    inputs: (context, [id, index]) => {
      const need = context.plan.steps?.find((step) => step.id === id)?.needs[Number(index)];
      return need === undefined
        ? []
        : [{ name: say`${need.step}, ${need.until}`, value: waitText(need.waitS) }];
    },
  },
};

function waitText(waitS: number | null): WorkingInput["value"] {
  return waitS === null ? "not known" : duration(waitS);
}

function rowOf(board: StepsInput, layup: LayupPlan | null, id: string | undefined): StepRow | undefined {
  const { standing } = readRecord(board.record ?? [], board.survey);
  return chooseRows(readChoices(board, layup), standing.sandThroughs).find((row) => row.id === id);
}

function listHandsOn({ plan, board }: StepsContext, [id]: readonly string[]): WorkingInput[] {
  const labour = rowOf(board, plan.layup, id)?.labour;
  if (labour === undefined) return [];
  const { experience } = crewOf(board.shop);
  if (labour.kind === "coat") {
    const cups = plan.mix?.coats.find((coat) => coat.id === labour.coat)?.cups ?? [];
    return cups.map((cup, i) => ({ name: say`cup ${i + 1}`, value: duration(cup.spreadS) }));
  }
  const sanding = plan.sanding?.work.find((each) => each.id === id);
  if (sanding !== undefined) return [{ name: "all its papers", value: duration(sanding.handsOnS) }];
  const { fixedS, perM2S, skill } = STEP_WORK[labour.work];
  const faces = plan.layup?.faces.filter((face) => labour.faces.includes(face.id)) ?? [];
  return [
    { name: "fixed, trade hand", value: duration(fixedS.value) },
    { name: "per square metre, trade hand", value: duration(perM2S.value) },
    ...faces.map((face): WorkingInput => ({ name: face.id, value: area(face.areaM2) })),
    { name: say`practice: ${experience}, times`, value: String(EXPERIENCE[experience][skill].value) },
  ];
}
