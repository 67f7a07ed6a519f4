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
