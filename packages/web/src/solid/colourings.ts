import type { Plan } from "@lapline/engine";
import { type Colouring, divergingBands, sequentialBands } from "./Colouring";
import { lapsOf } from "./lapsOf";
import { lineOf, type SolidPlace } from "./SolidPlace";
import { skinOf } from "./skinOf";
import { zoneFinder } from "./zoneFinder";

/** All that the plan knows enough of to show; the difference first. */
export function listColourings(plan: Plan): readonly Colouring[] {
  return [difference(plan), film(plan), skin(plan)].filter((each) => each !== null);
}

/** How much fuller this side is than the other at the same distance from the tail. */
function difference({ shape }: Plan): Colouring | null {
  if (shape === null) return null;
  const leftOver = lineOf(shape.outline, ({ leftM, rightM }) => leftM - rightM);
  const mostM = Math.max(...shape.outline.map(({ leftM, rightM }) => Math.abs(leftM - rightM)));
  return {
    id: "difference",
    bands: divergingBands(mostM),
    valueAt: ({ fromTailM, side }) => (side === "left" ? 1 : -1) * leftOver(fromTailM),
  };
}

/**
 * Film that the papers leave: the plan's places along the rail, the ends' own at the ends, the faces' own in from the lap; evenly
 * between them, as the drawing of the film has it.
 */
function film({ shape, layup, sanding }: Plan): Colouring | null {
  if (shape === null || layup === null || sanding === null || sanding.places.length === 0) return null;
  const left = (id: string): number => sanding.zones.find((zone) => zone.id === id)?.remainingM ?? 0;
  const edges = Object.fromEntries(
    (["left", "right"] as const).map((side) => {
      const along = sanding.places.filter((place) => place.side === side);
      const ends = [
        { fromTailM: 0, remainingM: left("tail") },
        ...along,
        { fromTailM: shape.lengthM, remainingM: left("nose") },
      ];
      return [side, lineOf(ends, ({ remainingM }) => remainingM)];
    }),
  );
  const laps = lapsOf(layup);
  const valueAt = ({ fromTailM, side, face, fromEdgeM }: SolidPlace): number => {
    const edgeM = edges[side]?.(fromTailM) ?? 0;
    const share = laps[face] > 0 ? Math.min(fromEdgeM / laps[face], 1) : 1;
    return edgeM + share * (left(face) - edgeM);
  };
  const seen = [
    ...sanding.places.map(({ remainingM }) => remainingM),
    ...["tail", "nose", "deck", "bottom"].map(left),
  ];
  const bands = sequentialBands(Math.max(Math.min(...seen), 0), Math.max(...seen, 0));
  const isThrough = Math.min(...seen) < 0;
  return {
    id: "film",
    bands: isThrough ? [{ fromM: null, toM: 0, token: "solid-through" }, ...bands] : bands,
    valueAt,
  };
}

/** Laminate, fill and gloss over each other where they lie. */
function skin(plan: Plan): Colouring | null {
  const { layup, shape } = plan;
  if (shape === null || layup === null) return null;
  const zoneAt = zoneFinder(plan);
  const seen = layup.zones.map(skinOf);
  return {
    id: "skin",
    bands: sequentialBands(Math.min(...seen), Math.max(...seen)),
    valueAt: (place) => {
      const zone = zoneAt(place);
      return zone === null ? 0 : skinOf(zone);
    },
  };
}
