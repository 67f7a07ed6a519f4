import { type BoardFile, isSame } from "@lapline/contract";
import type { ShopFailure } from "../api/ShopFailure";
import { type Draft, understand } from "../board/applyEdit";
import type { GoodBoard } from "../board/planOf";
import { fileToSend, type HeldBoard, listClashes } from "./HeldBoard";
import { endStep, type History, NO_HISTORY } from "./history";
import type { ChangedBy, OpenBoard, SavingState } from "./SessionView";

/** All that a session of an open board remembers; `held.mine` is the draft's file. */
export interface BoardState {
  readonly held: HeldBoard;
  readonly draft: Draft;
  readonly history: History;
  readonly notice: OpenBoard["notice"];
  readonly changedBy: ChangedBy | null;
  /** Why the last sending failed. */
  readonly failure: ShopFailure | null;
  /** How many entries of this board wait on this device. */
  readonly entries: number;
}

export function firstState(held: HeldBoard, good: GoodBoard): BoardState {
  const draft = isSame(held.mine, good.file)
    ? { file: good.file, problems: [], good }
    : understand(held.mine, good);
  return { held, draft, history: NO_HISTORY, notice: null, changedBy: null, failure: null, entries: 0 };
}

/** After something came from elsewhere; what is typed next is a step of its own, so that undo takes back only what is of here. */
export function withHeld(state: BoardState, held: HeldBoard): BoardState {
  const isTyped = held.mine !== state.held.mine && !isSame(held.mine, state.held.mine);
  const draft = isTyped ? understand(held.mine, state.draft.good) : state.draft;
  return {
    ...state,
    held: { ...held, mine: draft.file },
    draft,
    history: isTyped ? endStep(state.history) : state.history,
  };
}

/** The file after a step of the reader. */
export function withFile(state: BoardState, file: BoardFile, history: History): BoardState {
  const draft = understand(file, state.draft.good);
  return { ...state, held: { ...state.held, mine: file }, draft, history, notice: null };
}

/** Whether the shop's computer has yet to hear of something. */
export function isUnsent({ held, entries }: BoardState): boolean {
  return entries > 0 || !isSame(fileToSend(held), held.kept);
}

export function viewOf(state: BoardState): OpenBoard {
  const { draft, history, notice, changedBy, held } = state;
  return {
    kind: "open",
    draft,
    saving: savingOf(state),
    clashes: listClashes(held),
    changedBy,
    canUndo: history.past.length > 0,
    canRedo: history.future.length > 0,
    notice,
  };
}

function savingOf(state: BoardState): SavingState {
  const { failure, draft, entries } = state;
  const paths = draft.problems.map(({ path }) => path);
  if (failure?.kind === "unpaired" || failure?.kind === "not-allowed" || failure?.kind === "refused")
    return failure;
  if (!isUnsent(state)) return { kind: "saved", isAway: failure !== null };
  if (failure !== null) return { kind: "on-device", why: failure.kind, entries };
  return paths.length > 0 ? { kind: "unread", paths } : { kind: "waiting" };
}
