import type { Face, LayupPlan, ZonePlan } from "../layup/LayupPlan";
import { spotOfZone } from "../layup/spotOfZone";
import type { BoardShape } from "../shape/BoardShape";
import { computeEndRadius } from "./computeRailRadius";
import type { RailSpot } from "./listRailPlaces";
import type { SandingBoard } from "./SandingBoard";

/** A zone of the lay-up as the sander meets it. */
export interface ZoneSpot {
  readonly zone: ZonePlan;
  readonly face: Face;
  readonly byHand: boolean;
  readonly isFlange: boolean;
  readonly radiusM: number | null;
  /** Film here over the lay-up's: less where a rail is sharper than at half length. */
  readonly filmShare: number;
  readonly fromTailM: number | null;
}

/**
 * The lay-up's zones, each rail by its sharpest place, and the stringer where it is said to stand proud: the film over it is thinner by as
 * much as it stands up.
 */
export function listZoneSpots(
  { blank }: SandingBoard,
  layup: LayupPlan,
  shape: BoardShape,
  rails: readonly RailSpot[],
): readonly ZoneSpot[] {
  const spots = layup.zones.map((zone): ZoneSpot => {
    const { face, place } = spotOfZone(zone.id);
    return {
      zone,
      face,
      byHand: place !== "flat",
      isFlange: zone.id.startsWith("box-"),
      ...(place === "edge" ? edgeOf(zone.id, shape, rails) : FLAT),
    };
  });
  const proudM = blank?.stringer?.proudM ?? 0;
  const deck = layup.zones.find(({ id }) => id === "deck");
  if (!(proudM > 0) || deck === undefined) return spots;
  return [
    ...spots,
    { zone: overStringer(deck, proudM), face: "deck", byHand: false, isFlange: false, ...FLAT },
  ];
}

const FLAT = { radiusM: null, filmShare: 1, fromTailM: null };

function edgeOf(
  id: string,
  shape: BoardShape,
  rails: readonly RailSpot[],
): Pick<ZoneSpot, "radiusM" | "filmShare" | "fromTailM"> {
  if (id === "tail" || id === "nose") return { ...FLAT, radiusM: computeEndRadius(shape, id) };
  const places = rails.filter(({ side }) => id === `rail-${side}`);
  if (places.length === 0) return FLAT;
  return places.reduce((sharpest, place) => (place.radiusM < sharpest.radiusM ? place : sharpest));
}

/** Resin lies level over a ridge; where the ridge is higher than the film is thick, none lies on it. */
function overStringer(deck: ZonePlan, proudM: number): ZonePlan {
  const over = (filmM: number) => Math.max(filmM - proudM, 0);
  return {
    ...deck,
    id: "stringer",
    fillThicknessM: over(deck.fillThicknessM),
    fillThicknessLowM: over(deck.fillThicknessLowM),
    fillThicknessHighM: over(deck.fillThicknessHighM),
  };
}
