import type { BoardFile } from "@lapline/contract";
import { isSame } from "@lapline/contract";
import { mergeFiles, type Pick } from "./mergeFiles";
import type { ChangedBy, Clash } from "./SessionView";

/** A board as a session holds it: what is typed here, what the shop's computer keeps, and what both began from. */
export interface HeldBoard {
  /** The last common state, field by field; at a clash it stays behind until somebody has chosen. */
  readonly base: BoardFile;
  readonly mine: BoardFile;
  readonly kept: BoardFile;
  readonly revision: string | null;
  readonly by: ChangedBy | null;
  /** When each field was typed here, by its path. */
  readonly typedAt: Readonly<Record<string, string>>;
  /** What was sent and has no answer, the newest last: it may be kept all the same. */
  readonly sent: readonly Sent[];
}

interface Sent {
  readonly file: BoardFile;
  /** What both sides know once it is kept. */
  readonly base: BoardFile;
}

/** A network that comes and goes can leave several without an answer. */
const MOST_SENT = 8;

/** What the shop's computer keeps now. */
export interface KeptNow {
  readonly file: BoardFile;
  readonly revision: string | null;
  readonly by: ChangedBy | null;
}

const HERE: Pick = (changed, { mine, theirs }) => (changed === "theirs" ? theirs : mine);
const THERE: Pick = (changed, { mine, theirs }) => (changed === "mine" ? mine : theirs);
const KNOWN_TO_BOTH: Pick = (changed, { base, theirs }) => (changed === "clash" ? base : theirs);
const KNOWN_ONCE_SENT: Pick = (changed, three) =>
  changed === "clash" ? three.base : THERE(changed, three, "");

const threeOf = ({ base, mine, kept }: HeldBoard) => ({ base, mine, theirs: kept });
const merged = (held: HeldBoard, pick: Pick) => mergeFiles(threeOf(held), pick) as BoardFile;

/** Takes in what is kept there now: field by field, and what was typed here stands. */
export function takeIn(held: HeldBoard, now: KeptNow): HeldBoard {
  const own = held.sent.find(({ file }) => isSame(file, now.file));
  if (own !== undefined) return afterSaved(held, own, now.revision);
  const between = { ...held, kept: now.file };
  return {
    ...between,
    mine: merged(between, HERE),
    base: merged(between, KNOWN_TO_BOTH),
    revision: now.revision,
    by: now.by,
    sent: [],
  };
}

/** Whether what is kept there came from here. */
export function isOwn(held: HeldBoard, file: BoardFile): boolean {
  return held.sent.some((each) => isSame(each.file, file));
}

/** What is to be sent: everything typed here, but for clashes, where what is kept stays until somebody has chosen. */
export function fileToSend(held: HeldBoard): BoardFile {
  return merged(held, THERE);
}

/** What is to be sent now, with what will be known to both; more may be typed while it is on its way. */
export function sentNow(held: HeldBoard): Sent {
  return { file: fileToSend(held), base: merged(held, KNOWN_ONCE_SENT) };
}

/** No answer came yet. */
export function withSent(held: HeldBoard, sent: Sent): HeldBoard {
  const others = held.sent.filter(({ file }) => !isSame(file, sent.file));
  return { ...held, sent: [...others, sent].slice(-MOST_SENT) };
}

/** After what was sent is kept; what was typed meanwhile stands. */
export function afterSaved(held: HeldBoard, sent: Sent, revision: string | null): HeldBoard {
  return { ...held, base: sent.base, kept: sent.file, revision, sent: [] };
}

/** The fields in which somebody has to choose. */
export function listClashes(held: HeldBoard): readonly Clash[] {
  const clashes: Clash[] = [];
  merged(held, (changed, { mine, theirs }, path) => {
    if (changed === "clash") {
      const typedAt = Object.entries(held.typedAt).findLast(([each]) => isWithin(each, path))?.[1] ?? null;
      clashes.push({ path, mine, typedAt, theirs, by: held.by });
    }
    return theirs;
  });
  return clashes;
}

const isWithin = (one: string, other: string): boolean => one.startsWith(other) || other.startsWith(one);

/** One clash decided: from now on the field is like any other. */
export function decide(held: HeldBoard, path: string, side: "mine" | "theirs"): HeldBoard {
  const mine = merged(held, (changed, three, at) =>
    at === path && side === "theirs" ? three.theirs : HERE(changed, three, at),
  );
  const base = merged(held, (changed, three, at) =>
    at === path ? three.theirs : KNOWN_TO_BOTH(changed, three, at),
  );
  return { ...held, mine, base };
}
