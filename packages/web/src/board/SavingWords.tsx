import type { SavingState } from "./useSaving";

/** Whether what is on the page is also on the shop's computer, in words. */
export function SavingWords({ state }: { state: SavingState }) {
  const words =
    state.kind === "saved"
      ? "Saved."
      : state.kind === "waiting"
        ? "Not saved yet."
        : `Not saved: ${state.why}.`;
  return (
    <p className={`saving saving-${state.kind}`} role="status">
      {words}
    </p>
  );
}
