import { statedTailWord } from "@lapline/present";
import type { FinsForm } from "./FinsForm";

/** What the distances from the tail that are typed here start at. */
export function statedTail({ plan }: FinsForm): string {
  return plan.finset === null ? "tail" : statedTailWord(plan.finset.line);
}
