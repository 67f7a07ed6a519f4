import type { Plan } from "@lapline/engine";

type Cup = NonNullable<Plan["mix"]>["coats"][number]["cups"][number];

export interface CupGroup {
  readonly count: number;
  readonly cup: Cup;
}

/** Cups that follow one another and hold the same, counted together: three cups alike are one line and a 3. */
export function groupCups(cups: readonly Cup[]): readonly CupGroup[] {
  const groups: Array<{ count: number; cup: Cup }> = [];
  for (const cup of cups) {
    const last = groups.at(-1);
    if (last !== undefined && holdSame(last.cup, cup)) last.count += 1;
    else groups.push({ count: 1, cup });
  }
  return groups;
}

function holdSame(a: Cup, b: Cup): boolean {
  return (
    a.baseMassKg === b.baseMassKg &&
    a.hardenerMassKg === b.hardenerMassKg &&
    a.waxVolumeM3 === b.waxVolumeM3 &&
    a.tintMassKg === b.tintMassKg
  );
}
