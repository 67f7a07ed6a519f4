import { type Phrase, type Plan, say } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { tellPhrase } from "../language/tellPhrase";
import { tellText } from "../language/tellText";
import { finName } from "./finName";

type Verify = NonNullable<Plan["finset"]>["verify"];
type Check = Verify["checks"][number];

/** What a check is called, with the fin and side that it is made at: `String, front left`. */
export function checkName({ title, fin, side, id, from }: Check, reader: Reader): string {
  const t = tell(reader);
  const name = tellText(title, reader);
  if (fin === null) return name;
  const where = finName(side === null || side === "centre" ? fin : `${fin}-${side}`, reader);
  if (from === null) return `${name}, ${where}`;
  const words: Readonly<Record<string, string>> = {
    "nose-trailing": t`nose tip to trailing marks`,
    "nose-leading": t`nose tip to leading marks`,
    "tail-trailing": t`tail's middle to trailing marks`,
    "tail-leading": t`tail's middle to leading marks`,
    "crotch-trailing": t`crotch to trailing marks`,
    "crotch-leading": t`crotch to leading marks`,
  };
  return `${name}, ${where}: ${words[`${from}-${id.endsWith("trailing") ? "trailing" : "leading"}`] ?? id}`;
}

const READINGS: Readonly<Record<string, Phrase>> = {
  "beside-nose": say`beside the nose`,
  left: say`left`,
  right: say`right`,
  differ: say`left less right`,
  "trailing-from-centreline": say`trailing, from the line`,
  "leading-from-centreline": say`leading, from the line`,
  trailing: say`trailing mark`,
  leading: say`leading mark`,
  along: say`along the board`,
  cant: say`cant`,
  block: say`block`,
  depth: say`depth`,
  proud: say`proud`,
};

/**
 * What one reading of a check is of.
 * @param from what distances from the tail start at, by `statedTailWord`
 */
export function readingWords(id: string, reader: Reader, from = "tail"): string {
  const t = tell(reader);
  if (id === "trailing-from-tail") return t`trailing, from the ${from}`;
  if (id === "leading-from-tail") return t`leading, from the ${from}`;
  const phrase = READINGS[id];
  return phrase === undefined ? finName(id, reader) : tellPhrase(phrase, reader);
}

/** The gate's verdict: a word or three, and what comes next. */
export function verdictWords(
  { verdict, next, checks, glassedOn }: Verify,
  reader: Reader,
): {
  readonly short: string;
  readonly follows: string;
} {
  const t = tell(reader);
  const nextCheck = checks.find(({ id }) => id === next);
  const name = nextCheck === undefined ? "" : checkName(nextCheck, reader);
  // Fins that are glassed on see no router.
  const isGlass = glassedOn.length > 0;
  const notYet = isGlass ? t`No glass yet` : t`No cut yet`;
  switch (verdict) {
    case "go":
      return {
        short: t`Go`,
        follows: isGlass
          ? t`Every check before the fins are glassed on is good.`
          : t`Every check before the router is good.`,
      };
    case "blocked":
      return { short: isGlass ? t`No glass` : t`No cut`, follows: t`What stops the fins comes first.` };
    case "correct": {
      const { length } = checks.filter(({ state }) => state === "out");
      return {
        short: notYet,
        follows:
          length === 1
            ? t`1 check is out. Correct first: ${name}.`
            : t`${length} checks are out. Correct first: ${name}.`,
      };
    }
    case "open": {
      const { length } = checks.filter(({ state, required }) => required && state === "open");
      return {
        short: notYet,
        follows:
          length === 1
            ? t`1 check is still to be made. Next: ${name}.`
            : t`${length} checks are still to be made. Next: ${name}.`,
      };
    }
  }
}
