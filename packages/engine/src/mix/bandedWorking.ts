import { say } from "../foundation/phrase";
import type { Working, WorkingTable } from "../foundation/stage";
import type { MixContext } from "./MixContext";

/** One working for a number and for both ends of its band; `path` without the number's unit. */
export function bandedWorking(
  path: string,
  unit: string,
  working: Working<MixContext>,
): WorkingTable<MixContext> {
  const end = (which: string): Working<MixContext> => ({
    ...working,
    words: say`${which} of about 90 %: ${working.words}`,
  });
  return {
    [`${path}${unit}`]: working,
    [`${path}Low${unit}`]: end("early end of a band"),
    [`${path}High${unit}`]: end("late end of a band"),
  };
}
