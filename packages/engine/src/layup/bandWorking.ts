import { say } from "../foundation/phrase";
import type { Working, WorkingTable } from "../foundation/stage";

/**
 * One working for a predicted number and for both ends of its band: `bandWorking("weight.foam", "Kg", …)` gives it to `foamKg`,
 * `foamLowKg` and `foamHighKg`.
 */
export function bandWorking<P>(path: string, unit: string, working: Working<P>): WorkingTable<P> {
  const end = (words: string): Working<P> => ({
    ...working,
    words: say`${words} of about 90 %: ${working.words}`,
    formula: say`${working.formula}; each input alone at its ends, moves summed in squares`,
  });
  return {
    [`${path}${unit}`]: working,
    [`${path}Low${unit}`]: end("low end of a band"),
    [`${path}High${unit}`]: end("high end of a band"),
  };
}
