import { mass, type Plan, type Quantity, volume } from "@lapline/engine";

type Cup = NonNullable<Plan["mix"]>["coats"][number]["cups"][number];

/** Below this a tenth of a gram is too coarse a step for a dose. */
const SMALL_KG = 0.002;

/** A cup's hardener by mass and by volume, a small dose as finely as a good scale or syringe goes. */
export function hardenerAmounts(cup: Pick<Cup, "hardenerMassKg" | "hardenerVolumeM3">): {
  readonly byMass: Quantity;
  readonly byVolume: Quantity;
} {
  const [byMass, byVolume] = [mass(cup.hardenerMassKg), volume(cup.hardenerVolumeM3)];
  if (cup.hardenerMassKg >= SMALL_KG) return { byMass, byVolume };
  return { byMass: { ...byMass, grain: "fine" }, byVolume: { ...byVolume, grain: "fine" } };
}
