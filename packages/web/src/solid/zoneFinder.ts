import type { Plan } from "@lapline/engine";
import { lapsOf } from "./lapsOf";
import { lineOf, type SolidPlace } from "./SolidPlace";

type Layup = NonNullable<Plan["layup"]>;
type Zone = Layup["zones"][number];

/** Nearer to the edge than this share of the lap the rail's own spot is nearer than the lap's, which stands in its middle. */
export const RAIL_SHARE = 0.25;

/** Which zone of the lay-up a place lies in: the zone's figures hold for all of it. */
export function zoneFinder({ shape, layup }: Plan): (place: SolidPlace) => Zone | null {
  if (shape === null || layup === null) return () => null;
  const zones = new Map(layup.zones.map((zone) => [zone.id, zone]));
  const laps = lapsOf(layup);
  const tapeM = lineOf(shape.profile, ({ fromTailTapeM }) => fromTailTapeM);
  const foot = footPatch(layup, shape);
  return (place) => {
    const { fromTailM, side, face, fromEdgeM } = place;
    const lapM = laps[face];
    if (fromEdgeM < RAIL_SHARE * lapM) {
      if (fromTailM < RAIL_SHARE * lapM) return zones.get("tail") ?? null;
      if (shape.lengthM - fromTailM < RAIL_SHARE * lapM) return zones.get("nose") ?? null;
      return zones.get(`rail-${side}`) ?? null;
    }
    if (fromEdgeM < lapM) return zones.get(`lap-${face}`) ?? null;
    const at = tapeM(fromTailM);
    const underFoot = foot !== null && face === "deck" && at >= foot.fromTailTapeM && at <= foot.toTapeM;
    return zones.get(underFoot ? "deck-foot" : face) ?? null;
  };
}

/** The patch that makes the skin under the back foot another than the deck's; null where none does. */
function footPatch(
  { zones, pieces }: Layup,
  { lengthTapeM }: NonNullable<Plan["shape"]>,
): NonNullable<Layup["pieces"][number]["extent"]> | null {
  const glassOf = (id: string) => zones.find((zone) => zone.id === id)?.glassArealMassKgM2;
  if (glassOf("deck-foot") === glassOf("deck")) return null;
  const aft = pieces.find(
    ({ face, extent }) => face === "deck" && extent !== null && extent.fromTailTapeM < lengthTapeM / 2,
  );
  return aft?.extent ?? null;
}
