import type { Phrase } from "@lapline/engine";
import type { Tell } from "@lapline/present";
import type { ShopFailure } from "./ShopFailure";
import { ShopFailureError } from "./ShopFailureError";

type Fields = Readonly<Record<string, unknown>>;

/** Why the shop's computer did not do it, in the reader's language; what was never meant for a page stays as it was said. */
export function failureWords(failed: unknown, t: Tell): string {
  if (failed instanceof ShopFailureError) return wordsOf(failed.failure, t);
  return failed instanceof Error ? failed.message : String(failed);
}

function wordsOf(failure: ShopFailure, t: Tell): string {
  switch (failure.kind) {
    case "away":
      return t`The shop's computer cannot be reached.`;
    case "full":
      return t`The disk of the shop's computer is full.`;
    case "read-only":
      return t`The disk of the shop's computer can only be read.`;
    case "database":
      return t`The shop's database cannot be reached just now.`;
    case "unpaired":
      return t`This device is not paired with the shop's computer.`;
    default:
      return refusalWords(failure, t);
  }
}

/** One answer in words: its title and fields say what it is, and what the page has no sentence for is told as it came. */
export function refusalWords(
  { why, title = "", fields = {} }: { why: string; title?: string; fields?: Fields },
  t: Tell,
): string {
  return Object.hasOwn(SENTENCES, title) ? (SENTENCES[title]?.(t, fields) ?? why) : t`It answers: ${why}`;
}

/** By the title of the problem details. */
export const SENTENCES: Readonly<Record<string, (t: Tell, fields: Fields) => string>> = {
  "No such board": (t) => t`There is no such board on the shop's computer.`,
  "No such version": (t) => t`There is no such version on the shop's computer.`,
  "No such record": (t) => t`That is not on the shelf any more.`,
  "Not a board file": (t, { problems }) =>
    t`This is no board file that can be read: ${listPaths(t, problems)}`,
  "Not a record of this shelf": (t, { problems }) =>
    t`The shelf does not take it so: ${listPaths(t, problems)}`,
  "Put away": (t) =>
    t`This board was put away. Nothing of it is lost: a keeper can bring it back into the Shed.`,
  "Too large": (t) => t`This is too large: a board file has at most 2 MB, a photo 20 MB.`,
  "Too many pixels": (t, { wide, high }) =>
    t`This photo has ${String(wide)} x ${String(high)} pixels: more than 50 million, or a side over 16,384.`,
  "Not a photo": (t) => t`This is no photo as JPEG, PNG or WebP.`,
  "Enough photos": (t) =>
    t`This board has as many photos as devices at the bench may add. A keeper may add more.`,
  Busy: (t) => t`Many Sheets are being made just now. Ask again in a moment.`,
  "Took too long": (t) =>
    t`The Sheet took too long and was given up. Ask again when the shop's computer has less to do.`,
  "No Sheet": (t) =>
    t`No Sheet can be made of this board: it cannot be read, or has more on it than a Sheet has room for.`,
  "For keepers": (t) =>
    t`A device at the bench may read and add. Ask a keeper, or do it at the shop's computer.`,
  "Only at the shop's computer": (t) => t`That can only be done at the shop's computer.`,
  "Changed meanwhile": (t) =>
    t`It was changed on another device meanwhile. Nothing was kept: look at it and do it again.`,
  "Say which version was changed": (t) => t`There is one already: look at it and do it again.`,
  "Another entry has this id": (t) => t`Another entry is kept under this id already.`,
  "Something failed inside": (t) =>
    t`Something failed at the shop's computer. The terminal where Lapline runs says more.`,
};

/** Each place with what is wrong there, as the reader of board files says it. */
function listPaths(t: Tell, problems: unknown): string {
  const listed = (Array.isArray(problems) ? problems : []) as {
    path?: unknown;
    message?: unknown;
    says?: unknown;
  }[];
  const wrong = listed.map(({ path, message, says }) => {
    const told = Array.isArray(says) ? t`${says as Phrase}` : String(message);
    return `${String(path)}: ${told}`;
  });
  return wrong.join("; ");
}
