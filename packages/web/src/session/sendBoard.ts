import { formatBoardFile, isSame } from "@lapline/contract";
import type { SaveResult } from "../api/boardClient";
import type { ShopFailure } from "../api/ShopFailure";
import type { GoodBoard } from "../plan/GoodBoard";
import { type BoardState, withHeld, withUnderstood } from "./BoardState";
import { afterSaved, fileToSend, isOwn, type KeptNow, sentNow, takeIn, withSent } from "./HeldBoard";
import type { SessionParts } from "./SessionParts";
import type { ChangedBy } from "./SessionView";
import type { ShopCalls } from "./ShopCalls";

/** The state of the session as it is now: it may change while an answer is awaited. */
export interface LiveState {
  get(): BoardState;
  set(state: BoardState): void;
  /** Comes when what is typed is understood. */
  understood(): Promise<void>;
}

type Asked = Pick<SessionParts, "shop" | "planner">;

/** Somebody who saves all the time is let go first; after that it is tried again later. */
const MOST_ROUNDS = 8;

/** One plan may be on its way when the keys rest, and the one of the last key comes after it. */
const MOST_WAITS = 3;

/** Sends what is typed, taking in first what somebody else saved meanwhile; null once nothing is left to send. */
export async function sendBoard(
  id: string,
  live: LiveState,
  { shop, planner }: Asked,
): Promise<ShopFailure | null> {
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    for (let wait = 0; wait < MOST_WAITS && !live.get().draft.isUnderstood; wait += 1)
      await live.understood();
    const { held, draft } = live.get();
    // Somebody types on: it is sent when the keys rest, and what others changed is taken in before.
    if (!draft.isUnderstood) return null;
    if (draft.problems.length > 0 || isSame(fileToSend(held), held.kept)) return null;
    const sent = sentNow(held);
    live.set({ ...live.get(), held: withSent(live.get().held, sent) });
    const result = await shop.saveBoard(id, formatBoardFile(sent.file), held.revision);
    const failure = await answered({ live, planner }, sent, result);
    if (failure !== null) return failure;
  }
  return { kind: "away" };
}

async function answered(
  { live, planner }: { readonly live: LiveState } & Pick<Asked, "planner">,
  sent: ReturnType<typeof sentNow>,
  result: SaveResult,
): Promise<ShopFailure | null> {
  const state = live.get();
  if (result.kind === "saved") {
    live.set(withHeld(state, afterSaved(state.held, sent, result.revision)));
    return null;
  }
  if (result.kind !== "changed-meanwhile") return result;
  const { kept } = result;
  const read = kept === null ? null : await planner.plan(JSON.stringify(kept.file));
  if (kept === null || read?.ok !== true)
    return { kind: "refused", why: "What is kept there cannot be read as a board." };
  const by = { device: kept.device, at: kept.savedAt };
  takeKept(live, { file: read.file, revision: kept.revision, by }, read);
  return null;
}

/** Reads the board anew, and takes in what changed. Throws ShopFailureError. */
export async function refreshBoard(
  id: string,
  live: LiveState,
  { shop, planner }: Asked,
  by: ChangedBy | null,
): Promise<void> {
  const { text, revision } = await shop.readBoard(id);
  if (revision === live.get().held.revision) return;
  const read = await planner.plan(text);
  if (!read.ok) return;
  const from = by ?? (await whoSaved(id, revision, shop));
  takeKept(live, { file: read.file, revision, by: from }, read);
}

function takeKept(live: LiveState, now: KeptNow, good: GoodBoard): void {
  const before = live.get();
  const merged = withHeld(before, takeIn(before.held, now));
  // Where nothing else is typed here, its plan has come with it and is not waited for again.
  const { file, isUnderstood } = merged.draft;
  const isPlanned = !isUnderstood && isSame(file, good.file);
  const after = isPlanned ? withUnderstood(merged, file, { problems: [], good }) : merged;
  live.set(isOwn(before.held, now.file) ? after : { ...after, changedBy: now.by });
}

async function whoSaved(id: string, revision: string | null, shop: ShopCalls): Promise<ChangedBy | null> {
  const version = (await shop.listVersions(id)).find((each) => each.revision === revision);
  return version === undefined ? null : { device: version.device, at: version.savedAt };
}
