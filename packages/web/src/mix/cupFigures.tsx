import { count, mass, type Plan, volume } from "@lapline/engine";
import { hardenerAmounts, type Tell } from "@lapline/present";
import { Amount } from "../shared/Amount";
import type { FigureEntry } from "../shared/Figures";

type Cup = NonNullable<Plan["mix"]>["coats"][number]["cups"][number];

interface CupsAlike {
  readonly cups: number;
  readonly cup: Cup;
  /** The first one's place in the plan. */
  readonly at: string;
}

/** What goes into each of some cups alike, the hardener as it is measured out. */
export function cupFigures({ cups, cup, at }: CupsAlike, t: Tell): FigureEntry[] {
  const each = cups > 1 ? t`${cups} cups, each` : t`1 cup`;
  const { byMass, byVolume } = hardenerAmounts(cup);
  const drops = cup.hardenerDrops === null ? null : count(Math.round(cup.hardenerDrops));
  const hardener: FigureEntry = {
    name: t`hardener`,
    of: byVolume,
    why: `${at}.hardenerVolumeM3`,
    note: drops === null ? <Amount of={byMass} why={`${at}.hardenerMassKg`} /> : t`${byMass}, ${drops} drops`,
  };
  return [
    { name: t`resin`, of: mass(cup.baseMassKg), why: `${at}.baseMassKg`, note: each },
    ...(cup.hardenerMassKg > 0 ? [hardener] : []),
    ...(cup.waxVolumeM3 > 0
      ? [{ name: t`wax solution`, of: volume(cup.waxVolumeM3), why: `${at}.waxVolumeM3` }]
      : []),
    ...(cup.tintMassKg > 0
      ? [{ name: t`tint in it`, of: mass(cup.tintMassKg), why: `${at}.tintMassKg` }]
      : []),
  ];
}
