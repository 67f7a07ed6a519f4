import type { BoardFile, Problem } from "@lapline/contract";
import type { GoodBoard } from "./GoodBoard";
import { planOf } from "./planOf";
import { withoutUnread } from "./withoutUnread";

export interface Understood {
  readonly problems: readonly Problem[];
  /** Null where even what is left makes no plan. */
  readonly good: GoodBoard | null;
}

/** What is taken out may leave something that cannot be without it, which is then taken out in turn. */
const MOST_ROUNDS = 4;

/**
 * A board file as it was typed or merged, with what is understood of it. What is not is left out of the plan, or stands at its last
 * understood value, and all the rest counts.
 * @param known the file that was understood last
 */
export function understand(file: BoardFile, known: BoardFile): Understood {
  const read = planOf(JSON.stringify(file));
  return read.ok
    ? { problems: [], good: read }
    : { problems: read.problems, good: planWithout(file, read.problems, known) };
}

function planWithout(file: BoardFile, problems: readonly Problem[], known: BoardFile): GoodBoard | null {
  let [left, wrong] = [file, problems];
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    left = withoutUnread(left, wrong, known);
    const read = planOf(JSON.stringify(left));
    if (read.ok) return read;
    wrong = read.problems;
  }
  return null;
}
