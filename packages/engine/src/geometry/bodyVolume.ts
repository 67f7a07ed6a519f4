/** A body let into the board with resin around it, by its outer sizes. */
export type Body =
  | { readonly form: "block"; readonly lengthM: number; readonly widthM: number; readonly depthM: number }
  | { readonly form: "cylinder"; readonly diameterM: number; readonly depthM: number };

/**
 * Gives the space a body takes; with a gap, of the pocket cut for it: wider all round and deeper by the gap, corners square.
 * Plane geometry.
 * @param gapM between body and pocket, 0 or more
 * @returns m³
 */
export function computeBodyVolumeM3(body: Body, gapM = 0): number {
  const depthM = body.depthM + gapM;
  if (body.form === "block") return (body.lengthM + 2 * gapM) * (body.widthM + 2 * gapM) * depthM;
  return (Math.PI / 4) * (body.diameterM + 2 * gapM) ** 2 * depthM;
}

/** Gives the room left around a body in its pocket, up to the body's top: what is poured there. m³ */
export function computeAroundM3(body: Body, gapM: number): number {
  return computeBodyVolumeM3(body, gapM) - computeBodyVolumeM3(body);
}

/** Gives the opening a body takes in the surface it is let into. m² */
export function computeMouthM2(body: Body): number {
  return body.form === "block" ? body.lengthM * body.widthM : (Math.PI / 4) * body.diameterM ** 2;
}
