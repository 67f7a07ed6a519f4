import { type BoardFile, isSame } from "@lapline/contract";
import type { ShopFailure } from "../api/ShopFailure";
import type { Draft } from "../board/Draft";
import type { GoodBoard } from "../plan/GoodBoard";
import type { Understood } from "../plan/understand";
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
  const isUnderstood = isSame(held.mine, good.file);
  const draft = { file: isUnderstood ? good.file : held.mine, problems: [], good, isUnderstood };
  return { held, draft, history: NO_HISTORY, notice: null, changedBy: null, failure: null, entries: 0 };
}

/** After something came from elsewhere; what is typed next is a step of its own, so that undo takes back only what is of here. */
export function withHeld(state: BoardState, held: HeldBoard): BoardState {
  const isTyped = held.mine !== state.held.mine && !isSame(held.mine, state.held.mine);
  const draft = isTyped ? notUnderstood(state.draft, held.mine) : state.draft;
  return {
    ...state,
    held: { ...held, mine: draft.file },
    draft,
    history: isTyped ? endStep(state.history) : state.history,
  };
}

/** The file after a step of the reader. */
export function withFile(state: BoardState, file: BoardFile, history: History): BoardState {
  const draft = notUnderstood(state.draft, file);
  return { ...state, held: { ...state.held, mine: file }, draft, history, notice: null };
}

/** It stands on the page with the plan of what stood there before, until its own comes. */
function notUnderstood(draft: Draft, file: BoardFile): Draft {
  return { ...draft, file, isUnderstood: false };
}

/** After the plan of a file came; a newer one may have been typed meanwhile, whose plan is still to come. */
export function withUnderstood(
  state: BoardState,
  file: BoardFile,
  { problems, good }: Understood,
): BoardState {
  const { draft } = state;
  const isUnderstood = draft.file === file;
  return { ...state, draft: { file: draft.file, problems, good: good ?? draft.good, isUnderstood } };
}

/** Whether the shop's computer has yet to hear of something. */
export function isUnsent({ held, entries }: BoardState): boolean {
  return entries > 0 || !isSame(fileToSend(held), held.kept);
}

/** @param unsent whether it has something that the shop's computer has yet to hear of */
export function viewOf(state: BoardState, unsent: boolean): OpenBoard {
  const { draft, history, notice, changedBy, held } = state;
  return {
    kind: "open",
    draft,
    saving: savingOf(state, unsent),
    clashes: listClashes(held),
    changedBy,
    canUndo: history.past.length > 0,
    canRedo: history.future.length > 0,
    notice,
  };
}

function savingOf(state: BoardState, unsent: boolean): SavingState {
  const { failure, draft, entries } = state;
  const paths = draft.problems.map(({ path }) => path);
  if (failure?.kind === "unpaired" || failure?.kind === "not-allowed" || failure?.kind === "refused")
    return failure;
  if (!unsent) return { kind: "saved", isAway: failure !== null };
  if (failure !== null) return { kind: "on-device", why: failure.kind, entries };
  return paths.length > 0 ? { kind: "unread", paths } : { kind: "waiting" };
}
