/** How large a drawing is beside its place: whole, to where a pencil line is as wide as a thumb. */
export const MOST_ZOOM = 8;
const STEP = 1.5;

export const clampZoom = (zoom: number): number => Math.min(Math.max(zoom, 1), MOST_ZOOM);

/** What a key makes of the zoom; null where it is none of ours. */
export function zoomByKey(zoom: number, key: string): number | null {
  if (key === "+" || key === "=") return clampZoom(zoom * STEP);
  if (key === "-") return clampZoom(zoom / STEP);
  return key === "0" ? 1 : null;
}

/** Of a view that can be rolled: how far it is rolled, how much of it is seen, and all of it, along one edge. */
export interface Rolled {
  readonly at: number;
  readonly seen: number;
  readonly all: number;
}

/** What stands in the middle of a view, as a share of all of it. */
export const middleOf = ({ at, seen, all }: Rolled): number => (at + seen / 2) / all;

/** How far a view is rolled that has this share in its middle. */
export const rolledTo = (middle: number, { seen, all }: Omit<Rolled, "at">): number =>
  Math.min(Math.max(middle * all - seen / 2, 0), Math.max(all - seen, 0));
