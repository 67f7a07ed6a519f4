import { doseGrain, mass, type Plan, type Quantity, volume } from "@lapline/engine";

type Cup = NonNullable<Plan["mix"]>["coats"][number]["cups"][number];

/** A cup's hardener by mass and by volume, a small dose as finely as a good scale or syringe goes. */
export function hardenerAmounts(cup: Pick<Cup, "hardenerMassKg" | "hardenerVolumeM3">): {
  readonly byMass: Quantity;
  readonly byVolume: Quantity;
} {
  const grain = doseGrain(cup.hardenerMassKg);
  return {
    byMass: { ...mass(cup.hardenerMassKg), grain },
    byVolume: { ...volume(cup.hardenerVolumeM3), grain },
  };
}
