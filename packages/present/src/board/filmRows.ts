import type { Plan } from "@lapline/engine";
import { nearestPoint } from "./nearestPoint";

/** One side of the deck at one place: film at the rail, on the flat, and how wide the strip between is. */
export interface FilmRow {
  readonly id: string;
  /** Counted from the tail. */
  readonly number: number;
  /** One to the left, minus one to the right. */
  readonly sign: 1 | -1;
  readonly fromTailM: number;
  readonly halfWidthM: number;
  readonly edgeM: number;
  readonly flatM: number;
  readonly bandM: number;
}

/** The rail's places as rows across the deck, from tail to nose. */
export function filmRows({ shape, sanding, layup }: Plan): readonly FilmRow[] {
  if (shape === null || sanding === null) return [];
  const flatM = sanding.zones.find(({ id }) => id === "deck")?.remainingM ?? 0;
  const lapM = layup?.faces.find(({ id }) => id === "bottom")?.lapM ?? 0;
  return sanding.places.map((place) => {
    const point = nearestPoint(shape.outline, place.fromTailM);
    const halfWidthM = (place.side === "left" ? point?.leftM : point?.rightM) ?? 0;
    return {
      id: place.id,
      number: Number(place.id.replace(/^\D+/, "")),
      sign: place.side === "left" ? 1 : -1,
      fromTailM: point?.fromTailM ?? place.fromTailM,
      halfWidthM,
      edgeM: place.remainingM,
      flatM,
      bandM: Math.min(lapM, halfWidthM),
    };
  });
}

const STEPS_M = [10e-6, 20e-6, 25e-6, 50e-6, 100e-6];
const LINES_AT_MOST = 5;

/** Round films between the least at a rail and the flat, at most five. */
export function filmLevels(rows: readonly FilmRow[]): readonly number[] {
  const leastM = Math.min(...rows.map(({ edgeM }) => edgeM));
  const mostM = Math.max(...rows.map(({ flatM }) => flatM));
  if (!(mostM > leastM)) return [];
  const stepM = STEPS_M.find((step) => (mostM - leastM) / step <= LINES_AT_MOST) ?? mostM - leastM;
  const first = Math.ceil(leastM / stepM);
  const last = Math.ceil(mostM / stepM) - 1;
  return Array.from({ length: Math.max(last - first + 1, 0) }, (_, i) => (first + i) * stepM);
}
