import type { BenchHand } from "./BenchHand";
import type { ChosenStep } from "./chooseStep";

export interface BenchScreenProps {
  readonly hand: BenchHand;
  readonly chosen: ChosenStep;
  readonly nowMs: number;
  /** The address of the Bench. */
  readonly bench: string;
}
