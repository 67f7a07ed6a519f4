import type { BoardFile } from "@lapline/contract";
import { refusalWords } from "../api/failureWords";
import type { SavingState } from "../session/SessionView";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { fieldName } from "./fieldName";

/** Whether what is on the page is also on the shop's computer, in words. */
export function SavingWords({ state, file }: { state: SavingState; file: BoardFile }) {
  const isLate = state.kind !== "saved" && state.kind !== "waiting" && state.kind !== "on-device";
  return (
    <p className={`saving saving-${isLate ? "not-saved" : state.kind}`} role="status">
      <Words state={state} file={file} />
    </p>
  );
}

function Words({ state, file }: { state: SavingState; file: BoardFile }) {
  const t = useTell();
  const { reader } = useSettings();
  switch (state.kind) {
    case "saved":
      return state.isAway ? t`Saved. The shop's computer cannot be reached just now.` : t`Saved.`;
    case "waiting":
      return t`Not saved yet.`;
    case "unread":
      return t`Not saved: not understood yet: ${state.paths.map((path) => fieldName(file, path, reader)).join(", ")}.`;
    case "on-device":
      return <OnDevice {...state} />;
    case "not-allowed":
      return t`Not saved: this device may not change that. ${refusalWords(state, t)}`;
    case "unpaired":
      return (
        <>
          {t`Kept on this device: it is not paired with the shop's computer.`}{" "}
          <a href="/pair">{t`Pair this device`}</a>
        </>
      );
    case "refused":
      return t`Not saved: ${refusalWords(state, t)}`;
  }
}

function OnDevice({ why, entries }: Extract<SavingState, { kind: "on-device" }>) {
  const t = useTell();
  const reasons: Readonly<Record<typeof why, string>> = {
    away: t`The shop's computer cannot be reached; it goes out by itself once it can.`,
    full: t`The disk of the shop's computer is full: make room there, then it goes out by itself.`,
    "read-only": t`The disk of the shop's computer can only be read just now; it goes out by itself once it can be written.`,
    database: t`The shop's database cannot be reached just now; it goes out by itself once it can.`,
  };
  const what =
    entries === 0
      ? t`Kept on this device, not yet on the shop's computer.`
      : entries === 1
        ? t`Kept on this device, 1 entry waits for the shop's computer.`
        : t`Kept on this device, ${entries} entries wait for the shop's computer.`;
  return (
    <>
      <strong>{what}</strong> {reasons[why]}
    </>
  );
}
