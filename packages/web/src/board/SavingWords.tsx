import { useTell } from "../settings/useTell";
import type { SavingState } from "./useSaving";

/** Whether what is on the page is also on the shop's computer, in words. */
export function SavingWords({ state }: { state: SavingState }) {
  const t = useTell();
  const words =
    state.kind === "saved"
      ? t`Saved.`
      : state.kind === "waiting"
        ? t`Not saved yet.`
        : t`Not saved: ${state.why}.`;
  return (
    <p className={`saving saving-${state.kind}`} role="status">
      {words}
    </p>
  );
}
