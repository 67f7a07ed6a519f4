import { useEffect, useRef, useState } from "react";
import { saveBoard } from "../api/boardClient";

export type SavingState =
  | { readonly kind: "saved" }
  | { readonly kind: "waiting" }
  | { readonly kind: "not-saved"; readonly why: string };

/** Long enough that a reading is typed to its end, short enough that nobody closes the page before. */
const AFTER_MS = 700;
const AGAIN_MS = 5000;

interface Saving {
  readonly id: string;
  /** The file's text; null while what is typed cannot be read. */
  readonly text: string | null;
  /** The fields that are not understood, as a person knows them. */
  readonly unread: readonly string[];
  readonly opened: { readonly text: string; readonly revision: string | null };
}

/** Keeps the board on the shop's computer a moment after the last key, and says where it stands. */
export function useSaving({ id, text, unread, opened }: Saving): SavingState {
  const kept = useRef(opened);
  const [state, setState] = useState<SavingState>({ kind: "saved" });
  const [round, setRound] = useState(0);
  const names = unread.join(", ");

  useEffect(() => {
    if (text === null) {
      setState({ kind: "not-saved", why: `not understood yet: ${names}` });
      return;
    }
    if (text === kept.current.text) {
      setState({ kind: "saved" });
      return;
    }
    setState((before) => (before.kind === "not-saved" && round > 0 ? before : { kind: "waiting" }));
    let current = true;
    let again: ReturnType<typeof setTimeout> | undefined;
    const wait = setTimeout(async () => {
      const result = await saveBoard(id, text, kept.current.revision);
      if (result.kind === "saved") kept.current = { text, revision: result.revision };
      if (!current) return;
      if (result.kind === "unreachable") again = setTimeout(() => setRound((last) => last + 1), AGAIN_MS);
      setState(STATE_AFTER[result.kind](result.kind === "refused" ? result.why : ""));
    }, AFTER_MS);
    return () => {
      current = false;
      clearTimeout(wait);
      clearTimeout(again);
    };
  }, [id, text, names, round]);

  return state;
}

const STATE_AFTER: Readonly<
  Record<Awaited<ReturnType<typeof saveBoard>>["kind"], (why: string) => SavingState>
> = {
  saved: () => ({ kind: "saved" }),
  refused: (why) => ({ kind: "not-saved", why }),
  unreachable: () => ({
    kind: "not-saved",
    why: "the shop's computer cannot be reached; it will be tried again",
  }),
  "changed-meanwhile": () => ({
    kind: "not-saved",
    why: "the board was changed elsewhere since this page opened it. What you typed stays here: note it, load the page anew, then type it again",
  }),
};
