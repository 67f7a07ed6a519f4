import { say } from "@lapline/engine";
import { RefusedError } from "../RefusedError";

/** The one of the words that an option was given, or the usual one. Throws RefusedError. */
export function chooseWord<Word extends string>(
  option: string,
  given: string | true | undefined,
  { words, usual }: { readonly words: readonly Word[]; readonly usual?: Word },
): Word {
  const word = words.find((each) => each === (given ?? usual));
  if (word !== undefined) return word;
  const list = `${words.slice(0, -1).join(", ")} or ${words.at(-1)}`;
  throw new RefusedError(say`${option} is ${list}; ${JSON.stringify(given)} was given.`);
}
