import type { PeroxideResin } from "../constants/Resin";
import { computeSpreadByS, type GelModel } from "./GelModel";

/** Halvings of the dose range: to a millionth of it, finer than any scale weighs. */
const HALVINGS = 20;

/**
 * The dose for a cup that must stay open so long: the strongest in the resin's range whose early gel, less the margin, still leaves that
 * time, so that the film sets as soon as the work allows.
 * @param cup its temperature (K), mass (kg) and the time wanted (s) from the hardener going in
 * @returns hardener over base by mass, within the range; null where even the least dose is too quick
 */
export function computeDose(
  range: PeroxideResin["dose"],
  model: GelModel,
  cup: { readonly temperatureK: number; readonly massKg: number; readonly wantedS: number },
): number | null {
  const leavesTime = (dose: number) =>
    computeSpreadByS(model, { temperatureK: cup.temperatureK, massKg: cup.massKg, dose }) >= cup.wantedS;
  if (!leavesTime(range.least)) return null;
  if (leavesTime(range.most)) return range.most;
  let [slow, quick] = [range.least, range.most];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (slow + quick) / 2;
    if (leavesTime(middle)) slow = middle;
    else quick = middle;
  }
  return slow;
}
