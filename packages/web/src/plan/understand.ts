import { type BoardFile, type BoardFileRead, type Problem, readBoardDocument } from "@lapline/contract";
import type { GoodBoard } from "./GoodBoard";
import { planBoard } from "./planBoard";
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
  const read = readAgain(file);
  return read.ok
    ? { problems: [], good: planBoard(read) }
    : { problems: read.problems, good: planWithout(file, read.problems, known) };
}

/** As it will be read back once it was written: a field that holds nothing is none. */
const readAgain = (file: BoardFile): BoardFileRead => readBoardDocument(JSON.parse(JSON.stringify(file)));

function planWithout(file: BoardFile, problems: readonly Problem[], known: BoardFile): GoodBoard | null {
  let [left, wrong] = [file, problems];
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    left = withoutUnread(left, wrong, known);
    const read = readAgain(left);
    if (read.ok) return planBoard(read);
    wrong = read.problems;
  }
  return null;
}
