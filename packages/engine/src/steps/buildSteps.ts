import { REFERENCE_COAT_KG, REFERENCE_FACE_M2 } from "../constants/workTimes";
import type { FinsetPlan } from "../finset/FinsetPlan";
import { type Phrase, say } from "../foundation/phrase";
import { area, mass } from "../foundation/quantity";
import { type Assumption, finding, type Stage } from "../foundation/stage";
import type { LayupPlan } from "../layup/LayupPlan";
import { findFoamIn } from "../materials/listBlanks";
import { listFillers } from "../materials/listFillers";
import { crewOf } from "../mix/crewOf";
import type { MixPlan } from "../mix/MixPlan";
import type { LadderPlan } from "../sanding/LadderPlan";
import { assume } from "../sources/assume";
import { readChoices } from "./Choices";
import { checkDone } from "./checkDone";
import { checkGate } from "./checkGate";
import { checkThroughs } from "./checkThroughs";
import { chooseCautions, type GlassAndResins } from "./chooseCautions";
import { computeCureOutS } from "./computeCureOutS";
import { type Bench, computeHandsOnS, restsOnReference } from "./computeHandsOnS";
import { computeNoLoadS } from "./computeNoLoadS";
import { computeNeedWaitS, computeWaitS } from "./computeWaits";
import { listTools } from "./listTools";
import { readRecord } from "./readRecord";
import type { StepRow } from "./StepRow";
import type { StepsInput } from "./StepsInput";
import type { StepPlan } from "./StepsPlan";
import { chooseRows } from "./stepTable";

/** What was built before; null where it could not be. */
export interface StepsBasis {
  readonly finset: FinsetPlan | null;
  readonly layup: LayupPlan | null;
  readonly mix: MixPlan | null;
  /** The papers, whose times are those of the sanding steps; without them the usual times stand. */
  readonly ladder?: LadderPlan | null;
}

/**
 * The whole order of work for this board: each step with what it needs and why, the time for the hands and the wait after
 * it, the cautions where they matter, and what the record says is done. A sand-through in the record brings its repair.
 * Method: a table of steps, chosen by foam, laps, boxes, plug and finish; waits from the film's clocks of the mix.
 * @returns null with a note while nothing is said of the glass
 */
export function buildSteps(
  board: StepsInput,
  { finset, layup, mix, ladder = null }: StepsBasis,
): Stage<readonly StepPlan[]> {
  if (board.glass === undefined) {
    const says = say`the order of work follows once the board file says how it is glassed`;
    return { value: null, findings: [finding("note", "steps.no-glass", "glass", says)], assumptions: [] };
  }
  const choices = readChoices(board, layup);
  const { standing, findings } = readRecord(board.record ?? [], board.survey);
  const bench: Bench = { crew: crewOf(board.shop), layup, mix, ladder };
  const doneIds = new Set(standing.done.map(({ step }) => step));
  const rows = chooseRows(choices, standing.sandThroughs, doneIds);
  const rowOf = new Map(rows.map((row) => [row.id, row]));
  const waitOf = ({ step, until }: StepRow["needs"][number]) =>
    computeNeedWaitS(rowOf.get(step)!, until, mix);
  const steps = rows.map((row): StepPlan => {
    const asked = rows.flatMap(({ needs }) => needs.filter(({ step }) => step === row.id).map(waitOf));
    return {
      id: row.id,
      title: typeof row.title === "string" ? row.title : row.title(choices),
      after: row.needs.map(({ step }) => step),
      needs: row.needs.map(({ step, until, because }) => ({
        step,
        until,
        because,
        waitS: waitOf({ step, until, because }),
      })),
      because: row.because,
      coat: row.labour.kind === "coat" && row.labour.coat === row.id ? row.id : null,
      cures: row.labour.kind === "coat" ? row.labour.coat : null,
      handsOnS: computeHandsOnS(row, bench),
      waitS: computeWaitS(asked),
      noLoadS: computeNoLoadS(row, mix),
      materials: [
        ...(typeof row.materials === "function" ? row.materials(choices) : (row.materials ?? [])),
        ...listFillerOf(row, { layup, materials: board.materials }),
      ],
      tools: listTools(row),
      cautions: chooseCautions(row, choices, { input: board.glass, layup, materials: board.materials }),
      done: doneIds.has(row.id),
      doneAt: standing.done.findLast(({ step }) => step === row.id)?.at ?? null,
    };
  });
  const cured = steps.map((step) =>
    rowOf.get(step.id)!.isCureOut === true ? { ...step, waitS: computeCureOutS(steps, step, mix) } : step,
  );
  return {
    value: cured,
    findings: [
      ...findings,
      ...checkDone(standing.done, steps),
      ...checkThroughs(standing.sandThroughs, {
        done: standing.done,
        steps,
        order: (board.record ?? []).map(({ id }) => id),
      }),
      ...checkGate(standing.done, finset),
    ],
    assumptions: [...listTaken(rows, layup), ...listTakenChoices(board)],
  };
}

/** What the order of work took because glass or fins did not say it; glass tells its own defaults. */
/** What is stirred into the coat that the step lays. */
function listFillerOf(
  { labour }: StepRow,
  { layup, materials }: Pick<GlassAndResins, "layup" | "materials">,
): readonly string[] {
  const coat = labour.kind === "coat" ? layup?.coats.find(({ id }) => id === labour.coat) : undefined;
  const filler = listFillers(materials)[coat?.filler?.id ?? ""];
  return filler === undefined ? [] : [filler.name];
}

function listTakenChoices({ blank, glass, fins, materials }: StepsInput): Assumption[] {
  const list: Assumption[] = [];
  const take = (path: string, taken: Phrase, why: string) =>
    list.push(assume(path, taken, why, "common-practice"));
  if (blank === undefined || findFoamIn(materials, blank.foam) === null) {
    const taken = say`work and cautions of polystyrene foam`;
    take("steps", taken, "the foam is not known, and what is safe on polystyrene is safe on the others");
  }
  if (fins !== undefined && fins.boxes === undefined) {
    take("fins.boxes", say`boxes set after the fill coat`, "when the boxes go in was not given");
  }
  if (fins?.leashPlug !== undefined && fins.boxes === "glassed-on") {
    take(
      "fins.leashPlug",
      say`leash plug set after the fill coat`,
      "glassed-on fins bring no boxes to set it with",
    );
  }
  if (blank?.vent === undefined && isVentable(blank?.foam, materials)) {
    const taken = say`no vent`;
    const why = "none was asked for; a dark board in the sun, a hot car or a flight are what a vent is for";
    take("blank.vent", taken, why);
  }
  if (glass?.pinline === true && glass.finish !== "gloss") {
    const taken = say`the pinline gets a brushed coat of its own`;
    take("glass.pinline", taken, "no gloss coat goes over it");
  }
  return list;
}

function isVentable(foam: string | undefined, materials: StepsInput["materials"]): boolean {
  const kind = foam === undefined ? undefined : findFoamIn(materials, foam)?.kind;
  return kind === "eps" || kind === "xps";
}

function listTaken(rows: readonly StepRow[], layup: LayupPlan | null): Assumption[] {
  const times = assume(
    "steps",
    say`hands-on times by kind of work, face and practice`,
    "nobody's own times are known yet",
    "common-practice",
  );
  if (!rows.some((row) => restsOnReference(row, layup))) return [times];
  const reference = assume(
    "steps",
    say`faces of ${area(REFERENCE_FACE_M2.value)} and coats of ${mass(REFERENCE_COAT_KG.value)} where the board's own are not known`,
    "hands-on times need a size to go by",
    "common-practice",
  );
  return [times, reference];
}
