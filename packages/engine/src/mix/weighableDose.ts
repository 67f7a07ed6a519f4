import type { PeroxideResin } from "../constants/Resin";
import { asPrinted } from "../foundation/asPrinted";
import { mass, volume } from "../foundation/quantity";
import { doseGrain } from "./doseGrain";

/** Parts of the dose's last figure, over the base, by which it is moved until what is shown fits. */
const PARTS = 8;
const MOST_TRIES = 400;

/**
 * The nearest dose at which the cup's base and hardener as they are shown, by mass and by volume, keep the resin's range: what is
 * weighed out is what the page says, and a rounded gram on a small cup is a good share of its dose.
 * @param dose within the range
 * @param cup its mixed mass, kg
 * @returns null where no dose of the range can be shown so finely: the cup is too small for it
 */
export function weighableDose(
  { dose: range, hardenerDensityKgM3 }: Pick<PeroxideResin, "dose" | "hardenerDensityKgM3">,
  dose: number,
  cup: { readonly massKg: number },
): number | null {
  const show = (tried: number) => showDoses(cup.massKg, tried, hardenerDensityKgM3.value);
  const isKept = (tried: number) => show(tried).every((each) => each >= range.least && each <= range.most);
  if (isKept(dose)) return dose;
  const inward = show(dose).some((each) => each > range.most) ? -1 : 1;
  const stepRatio = (doseGrain(cup.massKg * dose) === "fine" ? 1e-5 : 1e-4) / (PARTS * cup.massKg);
  for (let i = 1; i <= MOST_TRIES; i++) {
    const tried = dose + inward * i * stepRatio;
    if (tried < range.least || tried > range.most) return null;
    if (isKept(tried)) return tried;
  }
  return null;
}

/** Hardener over base as they are shown, the hardener weighed and measured. */
function showDoses(massKg: number, dose: number, densityKgM3: number): readonly number[] {
  const baseKg = massKg / (1 + dose);
  const hardenerKg = massKg - baseKg;
  const grain = doseGrain(hardenerKg);
  const shownKg = asPrinted(mass(baseKg));
  return [
    asPrinted({ ...mass(hardenerKg), grain }) / shownKg,
    (densityKgM3 * asPrinted({ ...volume(hardenerKg / densityKgM3), grain })) / shownKg,
  ];
}
