import type { FinsetPlan } from "../finset/FinsetPlan";
import { say } from "../foundation/phrase";
import { type Finding, finding } from "../foundation/stage";
import type { DoneEntry } from "./Standing";

/** Pockets cut, or fins tacked on, while mark and verify had not said go: it happened, so it is measured now. */
export function checkGate(done: readonly DoneEntry[], finset: FinsetPlan | null): Finding[] {
  if (finset === null || finset.verify.verdict === "go") return [];
  const cut = done.find(({ step }) => step === "set-boxes");
  if (cut === undefined) return [];
  const says =
    finset.boxes === "glassed-on"
      ? say`the fins are marked set before mark and verify said go: measure them where they stand and enter them as set, while a tack can still be broken`
      : say`the pockets are marked cut before mark and verify said go: measure what was cut and enter it as set, before resin holds the boxes`;
  return [finding("warning", "steps.set-before-go", `record[${cut.id}].step`, says)];
}
