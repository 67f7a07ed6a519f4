import { formatProblems, type RecordEntryFile } from "@lapline/contract";
import type { ShopFailure } from "../api/ShopFailure";
import { ShopFailureError } from "../api/ShopFailureError";
import type { Draft } from "../board/Draft";
import { formatFieldPath, withField } from "../board/withField";
import type { GoodBoard } from "../plan/GoodBoard";
import { wallTime } from "../shared/wallTime";
import {
  type BoardState,
  firstState,
  isUnsent,
  viewOf,
  withFile,
  withHeld,
  withUnderstood,
} from "./BoardState";
import { failureIn, isPassing } from "./failureIn";
import { decide, type HeldBoard } from "./HeldBoard";
import { addStep, endStep } from "./history";
import { keepNewest } from "./keepNewest";
import type { SessionParts } from "./SessionParts";
import type { BoardSession, ChangedBy, NewEntry, SessionView } from "./SessionView";
import { refreshBoard, sendBoard } from "./sendBoard";
import { redoStep, undoStep } from "./undoStep";

/** Long enough that a reading is typed to its end, short enough that nobody closes the page before. */
const AFTER_TYPING_MS = 300;
/** Several changes heard of at once are read once; the shop's computer has gathered them already. */
const AFTER_NEWS_MS = 10;
const AGAIN_MS = 5000;

interface News {
  readonly by: ChangedBy | null;
  /** What is kept since; left out where that is not known. */
  readonly revision?: string;
}

const OPENING: SessionView = { kind: "opening" };

/** Opens a board: from this device where it was open before, and from the shop's computer. */
export function openSession(id: string, parts: SessionParts): BoardSession {
  const { shop, planner, device, outbox } = parts;
  let state: BoardState | null = null;
  let view: SessionView = OPENING;
  const heard = new Set<() => void>();
  const show = (next: SessionView) => {
    view = next;
    for (const each of heard) each();
  };
  const keep = keepNewest(device);
  const set = (next: BoardState) => {
    const isHeldAnew = next.held !== state?.held || next.entries !== state.entries;
    state = next;
    const unsent = isUnsent(next);
    show(viewOf(next, unsent));
    if (isHeldAnew) keep({ id, held: next.held, isUnsent: unsent });
    if (!next.draft.isUnderstood) understood().catch(() => soon(AGAIN_MS));
  };
  const change = (work: (state: BoardState) => BoardState) => {
    if (state === null) return;
    set(work(state));
    soon(AFTER_TYPING_MS);
  };
  let planning: Promise<void> | null = null;
  /** Plans what is typed, one file at a time; resolves with the first plan that comes. */
  const understood = async (): Promise<void> => {
    if (state === null || state.draft.isUnderstood) return;
    planning ??= planNewest(state.draft);
    await planning;
  };
  async function planNewest({ file, good }: Draft): Promise<void> {
    const read = await planner.understand(file, good.file).finally(() => {
      planning = null;
    });
    // What was typed meanwhile is planned next.
    set(withUnderstood(live.get(), file, read));
  }
  const live = { get: () => state as BoardState, set, understood };

  const timer = parts.timer();
  /** Its own, so that somebody who types all the while sees what others do all the same. */
  const newsTimer = parts.timer();
  let isRunning = false;
  let isAskedAgain = false;
  /** What was heard of changes elsewhere and not read yet; null where nothing was. */
  let news: News | null = { by: null };
  const soon = (ms: number) => timer.set(ms, () => void run());

  async function run(): Promise<void> {
    if (isRunning) {
      isAskedAgain = true;
      return;
    }
    isRunning = true;
    // This device's own memory can fail too: then it is tried again, as where the shop's computer is away.
    const failure = await (state === null ? open() : round()).catch(failureIn);
    isRunning = false;
    if (state !== null && state.failure !== failure) set({ ...state, failure });
    if (failure !== null && isPassing(failure)) soon(AGAIN_MS);
    else if (isAskedAgain) soon(0);
    isAskedAgain = false;
  }

  async function round(): Promise<ShopFailure | null> {
    // Entries that are sent make a version of the board.
    if (live.get().entries > 0) news ??= { by: null };
    const unsent = await outbox.flush();
    if (unsent !== null) return unsent;
    const asked = news;
    news = null;
    try {
      // What was heard of may be what this device sent itself.
      const isKnown = asked?.revision !== undefined && asked.revision === live.get().held.revision;
      if (asked !== null && !isKnown) await refreshBoard(id, live, parts, asked.by);
    } catch (error) {
      news = { by: null };
      return failureIn(error);
    }
    return sendBoard(id, live, parts);
  }

  async function open(): Promise<ShopFailure | null> {
    const kept = await device.readBoard(id);
    const good = kept === undefined ? null : await planner.plan(JSON.stringify(kept.held.kept));
    if (kept !== undefined && good?.ok === true) return start(kept.held, good);
    try {
      const { text, revision } = await shop.readBoard(id);
      const read = await planner.plan(text);
      if (!read.ok) {
        const { problems } = read;
        const why = { why: formatProblems(problems), title: "Not a board file", fields: { problems } };
        show({ kind: "failed", why: new ShopFailureError({ kind: "refused", ...why }), isUnpaired: false });
        return null;
      }
      news = null;
      const { file } = read;
      const held = { base: file, mine: file, kept: file, revision, by: null, typedAt: {}, sent: [] };
      return start(held, read);
    } catch (error) {
      const failure = failureIn(error);
      show({ kind: "failed", why: error, isUnpaired: failure.kind === "unpaired" });
      return failure;
    }
  }

  async function start(held: HeldBoard, good: GoodBoard): Promise<null> {
    const first = firstState(held, good);
    const { file, isUnderstood } = first.draft;
    const opened = isUnderstood
      ? first
      : withUnderstood(first, file, await planner.understand(file, good.file));
    set({ ...opened, entries: await outbox.count(id) });
    isAskedAgain = true;
    return null;
  }

  async function recount(): Promise<void> {
    const entries = await outbox.count(id);
    if (state !== null && state.entries !== entries) set({ ...state, entries });
  }
  outbox.subscribe(recount);

  function addEntry(entry: NewEntry): string {
    const id = parts.newId();
    if (state !== null) enter(state, { ...entry, id } as RecordEntryFile, id);
    return id;
  }

  /** @param wrote the entry's id where the step can be taken back by striking it */
  function enter(before: BoardState, entry: RecordEntryFile, wrote: string | null): void {
    const { file } = before.draft;
    const after = { ...file, record: [...(file.record ?? []), entry] };
    const step = { before: file, after, typing: null, wrote };
    const history = wrote === null ? before.history : addStep(before.history, step);
    set({ ...withFile(before, after, history), entries: before.entries + 1 });
    const sendNow = () => soon(0);
    // Where this device cannot keep it the record goes out with the board.
    outbox.add(id, entry).catch(recount).then(sendNow, sendNow);
  }

  /** An entry written last is struck by a later one, where none has corrected it yet. */
  function undo(): void {
    const wrote = state?.history.past.at(-1)?.wrote ?? null;
    const isCorrected = state?.draft.file.record?.some(({ corrects }) => corrects === wrote) ?? false;
    change((before) => stepped(before, undoStep(before.draft.file, before.history)));
    if (wrote === null || isCorrected || state === null) return;
    const at = wallTime(parts.now());
    enter(state, { id: parts.newId(), kind: "struck", corrects: wrote, at }, null);
    set({ ...state, notice: "struck" });
  }

  void run();
  return {
    view: () => view,
    subscribe(call) {
      heard.add(call);
      return () => void heard.delete(call);
    },
    edit(path, value) {
      if (formatFieldPath(path) === "record" && Array.isArray(value)) {
        const known = new Set(state?.draft.file.record?.map((entry) => entry.id));
        for (const entry of value as RecordEntryFile[]) if (!known.has(entry.id)) addEntry(entry);
        return;
      }
      change((before) => {
        const { file } = before.draft;
        const after = withField(file, path, value);
        const at = formatFieldPath(path);
        const step = { before: file, after, typing: parts.isTyping() ? at : null, wrote: null };
        const { [at]: _, ...others } = before.held.typedAt;
        const typedAt = { ...others, [at]: parts.now().toISOString() };
        const next = withFile(before, after, addStep(before.history, step));
        return { ...next, held: { ...next.held, typedAt } };
      });
    },
    addEntry,
    undo,
    redo: () => change((before) => stepped(before, redoStep(before.draft.file, before.history))),
    endStep() {
      if (state !== null) state = { ...state, history: endStep(state.history) };
    },
    choose: (path, side) =>
      change((before) => {
        const held = decide(before.held, path, side);
        const step = { before: before.held.mine, after: held.mine, typing: null, wrote: null };
        const after = withHeld(before, held);
        return side === "mine" ? after : { ...after, history: addStep(after.history, step) };
      }),
    takeBack: (file) =>
      change((before) => {
        const known = new Set(file.record?.map((entry) => entry.id));
        const since = (before.draft.file.record ?? []).filter((entry) => !known.has(entry.id));
        const after = { ...file, record: [...(file.record ?? []), ...since] };
        const step = { before: before.draft.file, after, typing: null, wrote: null };
        return withFile(before, after, addStep(before.history, step));
      }),
    send: () => soon(0),
    hear(by, revision) {
      // Of several the last is read, and one of which nothing is known is read in any case.
      const isAll = news !== null && news.revision === undefined;
      news = { by, ...(revision !== undefined && !isAll && { revision }) };
      newsTimer.set(AFTER_NEWS_MS, () => void run());
    },
  };
}

function stepped(before: BoardState, undone: ReturnType<typeof undoStep>): BoardState {
  if (undone === null) return before;
  return { ...withFile(before, undone.file, undone.history), notice: undone.notice };
}
