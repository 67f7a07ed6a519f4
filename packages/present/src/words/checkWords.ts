import type { Plan } from "@lapline/engine";
import { finName } from "./finName";

type Verify = NonNullable<Plan["finset"]>["verify"];
type Check = Verify["checks"][number];

/** What a check is called, with the fin and side that it is made at: `String, front left`. */
export function checkName({ title, fin, side, id, matter }: Check): string {
  if (fin === null) return title;
  const where = side === null || side === "centre" ? finName(fin) : `${finName(fin)} ${side}`;
  if (matter !== "diagonals") return `${title}, ${where}`;
  const [from, to] = id.endsWith("trailing") || id.endsWith("leading") ? id.split("-").slice(-2) : [];
  return `${title}, ${where}: ${from === "nose" ? "nose tip" : "tail's middle"} to ${to} marks`;
}

const READINGS: Readonly<Record<string, string>> = {
  "beside-nose": "beside the nose",
  left: "left",
  right: "right",
  differ: "left less right",
  "trailing-from-centreline": "trailing, from the line",
  "leading-from-centreline": "leading, from the line",
  trailing: "trailing mark",
  leading: "leading mark",
  along: "along the board",
  cant: "cant",
  block: "block",
  depth: "depth",
  proud: "proud",
};

/**
 * What one reading of a check is of.
 * @param from what distances from the tail start at, by `statedTailWord`
 */
export function readingWords(id: string, from = "tail"): string {
  if (id.endsWith("-from-tail")) return `${finName(id.replace("-from-tail", ""))}, from the ${from}`;
  return READINGS[id] ?? finName(id);
}

/** The gate's verdict: a word or three, and what comes next. */
export function verdictWords({ verdict, next, checks }: Verify): {
  readonly short: string;
  readonly follows: string;
} {
  const nextCheck = checks.find(({ id }) => id === next);
  const nextName = nextCheck === undefined ? "" : checkName(nextCheck);
  const countOf = (some: readonly Check[]): string =>
    some.length === 1 ? "1 check is" : `${some.length} checks are`;
  switch (verdict) {
    case "go":
      return { short: "Go", follows: "Every check before the router is good." };
    case "blocked":
      return { short: "No cut", follows: "What stops the fins comes first." };
    case "correct": {
      const out = checks.filter(({ state }) => state === "out");
      return { short: "No cut yet", follows: `${countOf(out)} out. Correct first: ${nextName}.` };
    }
    case "open": {
      const open = checks.filter(({ state, required }) => required && state === "open");
      return { short: "No cut yet", follows: `${countOf(open)} still to be made. Next: ${nextName}.` };
    }
  }
}
