import type { Board } from "./Board";
import { calendarWorking } from "./calendar/calendarWorking";
import { costWorking } from "./cost/costWorking";
import { cutplanWorking } from "./cutplan/cutplanWorking";
import { finsetWorking } from "./finset/finsetWorking";
import type { WorkingTable } from "./foundation/stage";
import { layupWorking } from "./layup/layupWorking";
import { mixWorking } from "./mix/mixWorking";
import type { Plan } from "./Plan";
import { sandingWorking } from "./sanding/sandingWorking";
import { shapeWorking } from "./shape/shapeWorking";
import { repairsWorking } from "./steps/repairsWorking";
import { stepsWorking } from "./steps/stepsWorking";
import { weighinsWorking } from "./weight/weighin/weighinsWorking";
import { weightWorking } from "./weight/weightWorking";

/** What the working of any number looks at. */
export interface WorkingContext {
  readonly plan: Plan;
  readonly board: Board;
}

/** The working of every number of the plan, a table a stage. */
export const WORKINGS: ReadonlyArray<WorkingTable<WorkingContext>> = [
  shapeWorking,
  finsetWorking,
  layupWorking,
  cutplanWorking,
  mixWorking,
  sandingWorking,
  weightWorking,
  weighinsWorking,
  costWorking,
  stepsWorking,
  repairsWorking,
  calendarWorking,
];
