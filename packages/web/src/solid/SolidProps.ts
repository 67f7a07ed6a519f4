import type { Plan, SurveyInput } from "@lapline/engine";
import type { ColouringId } from "./Colouring";

export interface SolidProps {
  readonly plan: Plan;
  readonly survey: SurveyInput;
  /** What is shown in colour when it opens. */
  readonly first: ColouringId;
}
