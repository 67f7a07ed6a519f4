import { duration, fraction, length, mass, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { tellText } from "../language/tellText";
import { hardenerAmounts } from "./hardenerAmounts";
import { wallTimeText } from "./wallTimeWords";

type Repair = NonNullable<Plan["repairs"]>[number];

/** What a repair is called: its number, what shows and where. */
export function repairTitle(repair: Repair, reader: Reader): string {
  const t = tell(reader);
  const number = repair.id.replace("repair-", "");
  return t`Repair ${number}: ${repair.shows} on the ${repair.side} of the ${repair.face}, ${length(repair.fromTailM)} from the tail, ${length(repair.sizeM)} across`;
}

/** What closes it, in the order of the work. */
export function repairSentences(repair: Repair, reader: Reader): readonly string[] {
  const t = tell(reader);
  const { dryS, featherM, layers, coats, shows } = repair;
  const patches = layers.map(({ cloth, acrossM }) => t`${cloth}, ${length(acrossM)} across`).join("; ");
  return [
    ...(repair.done ? [t`Done.`] : []),
    ...(dryS > 0
      ? [t`Keep water off. Let the foam dry ${duration(dryS)} in moving air, the spot upwards and open.`]
      : []),
    featherM > 0
      ? t`Feather the edge ${length(featherM)} out by hand, no step left; wipe the dust off dry.`
      : t`Stop sanding: the low spot is dulled by hand with a pad, and not chased.`,
    ...(layers.length > 0
      ? [
          ...hollowSentences(repair, reader),
          t`A hollow deeper than a coat is filled with a cup of its own first, thickened, and left to set.`,
        ]
      : []),
    ...(layers.length > 0
      ? [
          t`Patch, the smallest first, into the wet resin: ${patches}. The cut list has them apart from the order, for the repairs.`,
        ]
      : []),
    ...coats.map((coat) => coatSentence(coat, reader)),
    shows === "foam" || shows === "glass"
      ? t`Sand it level by hand once it is hard; the board is not for water until then.`
      : t`Sand it level by hand once it is hard.`,
  ];
}

/** What makes the spot level under the patches, as its share of their cup. */
function hollowSentences({ hollow, coats }: Repair, reader: Reader): readonly string[] {
  if (hollow === null) return [];
  const t = tell(reader);
  const dose = coats[0]?.hardenerRatio ?? null;
  const takes = t`Make it level first: what was sanded away is ${length(hollow.depthM)} deep (${length(hollow.depthLowM)} to ${length(hollow.depthHighM)}) and takes ${mass(hollow.resinMassKg)} (${mass(hollow.resinMassLowKg)} to ${mass(hollow.resinMassHighKg)}) of the patch resin, counted in its cup; thicken that much until it stays put.`;
  return dose === null || dose === 0 ? [takes] : [takes, t`It has the cup's dose, ${fraction(dose)}.`];
}

/** From when to when its steps stand in the days; none where they are not planned, or are done. */
export function repairDays(plan: Plan, repair: Repair, reader: Reader): readonly string[] {
  const own = (plan.calendar ?? []).filter(({ step, done }) => step.startsWith(`${repair.id}-`) && !done);
  const from = own[0]?.startsAt ?? null;
  const to = own.at(-1)?.endsAt ?? null;
  if (from === null || to === null) return [];
  const t = tell(reader);
  return [t`Days: ${wallTimeText(from, reader)} to ${wallTimeText(to, reader)}.`];
}

function coatSentence(coat: Repair["coats"][number], reader: Reader): string {
  const t = tell(reader);
  const use = coat.kind === "repair" ? t`Patch resin` : t`Fill coat`;
  const { resin, mixedMassKg, resinMassKg, baseMassKg, hardenerMassKg, hardenerVolumeM3 } = coat;
  if (baseMassKg === null || hardenerMassKg === null || hardenerVolumeM3 === null) {
    return t`${use}, ${tellText(resin, reader)}: mix ${mass(mixedMassKg)}; the dose is not known.`;
  }
  const { byMass, byVolume } = hardenerAmounts({ hardenerMassKg, hardenerVolumeM3 });
  return t`${use}, ${tellText(resin, reader)}: mix ${mass(baseMassKg)} and ${byMass} (${byVolume}) of hardener; the place takes ${mass(resinMassKg)}.`;
}
