import { extname, resolve } from "node:path";
import { say } from "@lapline/engine";
import { RefusedError } from "../RefusedError";

/**
 * The file to write and which of the endings it has. Throws RefusedError where it has another, or where it names a file that is
 * read (`keeps`), which would be lost.
 */
export function readOutputPath<Ending extends string>(
  given: string | true | undefined,
  { endings, keeps }: { readonly endings: readonly Ending[]; readonly keeps: readonly string[] },
): { readonly path: string; readonly ending: Ending } {
  const path = String(given);
  const ending = endings.find((each) => each === extname(path).toLowerCase());
  if (ending === undefined) {
    const list = [endings.slice(0, -1).join(", "), endings.at(-1)].filter((part) => part !== "").join(" or ");
    throw new RefusedError(say`-o is a file that ends in ${list}; ${JSON.stringify(path)} was given.`);
  }
  if (keeps.some((kept) => resolve(path) === resolve(kept)))
    throw new RefusedError(say`-o names a file that is read, ${path}; it would be lost. Name another.`);
  return { path, ending };
}
