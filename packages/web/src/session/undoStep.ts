import type { BoardFile } from "@lapline/contract";
import type { History } from "./history";
import { mergeFiles } from "./mergeFiles";
import type { OpenBoard } from "./SessionView";

interface Undone {
  readonly file: BoardFile;
  readonly history: History;
  readonly notice: OpenBoard["notice"];
}

/**
 * The last step taken back in the file as it is now: what others changed meanwhile stays, also where it is the same field, and the
 * record is never erased. Null where there is no step.
 */
export function undoStep(file: BoardFile, { past, future }: History): Undone | null {
  const step = past.at(-1);
  if (step === undefined) return null;
  const rest = past.slice(0, -1);
  if (step.wrote !== null) return { file, history: { past: rest, future }, notice: "record-stays" };
  const { merged, isWhole } = exchange(file, step.after, step.before);
  const history = { past: rest, future: [step, ...future] };
  return { file: merged, history, notice: isWhole ? null : "changed-since" };
}

/** The step that was taken back last, done again. */
export function redoStep(file: BoardFile, { past, future }: History): Undone | null {
  const [step, ...rest] = future;
  if (step === undefined) return null;
  const { merged, isWhole } = exchange(file, step.before, step.after);
  const history = { past: [...past, { ...step, typing: null }], future: rest };
  return { file: merged, history, notice: isWhole ? null : "changed-since" };
}

function exchange(file: BoardFile, from: BoardFile, to: BoardFile) {
  let isWhole = true;
  const merged = mergeFiles({ base: from, mine: to, theirs: file }, (changed, { mine, theirs }) => {
    if (changed === "clash") isWhole = false;
    return changed === "mine" ? mine : theirs;
  });
  return { merged: merged as BoardFile, isWhole };
}
