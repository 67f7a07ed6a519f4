import type { Change, Shop } from "@lapline/store";

/** Events are gathered for so long: a burst then costs each listener a few writes, and nobody sees the wait. */
const GATHER_MS = 100;
/** Changes that are kept at hand, for listeners that are a little behind. */
const AT_HAND = 1000;

export interface ChangeFeed {
  /** What follows this number as the text of server-sent events, and the number of the last one in it; null where nothing does. */
  after(seq: number): Promise<{ readonly text: string; readonly seq: number } | null>;
  /** Calls back when there is more; gives what ends it. */
  watch(heard: () => void): () => void;
  /** Looks whether something was missed. */
  look(): void;
}

/** One reader of the changes for all who listen: each change is read and written down once, however many hear it. */
export function openChangeFeed({ changes }: Shop): ChangeFeed {
  const listeners = new Set<() => void>();
  let atHand: Change[] = [];
  let texts = new Map<number, { readonly text: string; readonly seq: number }>();
  let [isNews, isReading] = [false, false];

  async function read(): Promise<void> {
    try {
      while (isNews) {
        isNews = false;
        // Before the first change nothing is at hand; whoever asks looks it up.
        const last = atHand.at(-1)?.seq ?? Math.max(0, (await changes.last()) - 1);
        const news = await changes.after(last);
        if (news.length > 0) {
          atHand = [...atHand, ...news].slice(-AT_HAND);
          texts = new Map();
          for (const heard of listeners) heard();
          // There may be more than one answer holds.
          isNews = true;
        }
        await new Promise((resolve) => setTimeout(resolve, GATHER_MS).unref());
      }
    } finally {
      isReading = false;
    }
  }

  function look(): void {
    isNews = true;
    if (isReading || listeners.size === 0) return;
    isReading = true;
    // A database that is away just now is asked again at the next look.
    void read().catch(() => undefined);
  }

  changes.watch(look);
  return {
    async after(seq) {
      const known = texts.get(seq);
      if (known !== undefined) return known;
      const first = atHand[0]?.seq;
      const isAtHand = first !== undefined && first <= seq + 1;
      const news = isAtHand ? atHand.filter((change) => change.seq > seq) : await changes.after(seq);
      const last = news.at(-1);
      if (last === undefined) return null;
      const text = news.map((change, i) => eventOf(change, news[i - 1]?.seq ?? seq)).join("");
      const made = { text, seq: last.seq };
      if (isAtHand) texts.set(seq, made);
      return made;
    },
    watch(heard) {
      listeners.add(heard);
      return () => void listeners.delete(heard);
    },
    look,
  };
}

/** WHATWG HTML, 9.2.5. Where changes before it are forgotten, the page reads everything again. */
function eventOf({ seq, ...change }: Change, before: number): string {
  return seq > before + 1
    ? `event: reload\nid: ${seq}\ndata: \n\n`
    : `event: change\nid: ${seq}\ndata: ${JSON.stringify(change)}\n\n`;
}
