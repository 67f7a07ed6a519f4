/** A body let into the board with resin around it: a fin box or the leash plug. */
export interface Socket {
  /** `front-left`, `centre`, `leash-plug`. */
  readonly id: string;
  readonly kind: "box" | "plug";
  readonly body: SocketBody;
  /** The fin's mark along the bottom; null for the plug. */
  readonly fromTailTapeM: number | null;
}

export type SocketBody =
  | { readonly form: "block"; readonly lengthM: number; readonly widthM: number; readonly depthM: number }
  | { readonly form: "cylinder"; readonly diameterM: number; readonly depthM: number };

/** The space a body takes; with a gap, the pocket cut for it: wider all round and deeper by the gap. */
export function computeSocketVolume(body: SocketBody, gapM = 0): number {
  const depthM = body.depthM + gapM;
  if (body.form === "block") return (body.lengthM + 2 * gapM) * (body.widthM + 2 * gapM) * depthM;
  return (Math.PI / 4) * (body.diameterM + 2 * gapM) ** 2 * depthM;
}

export function computeSocketMouth(body: SocketBody): number {
  return body.form === "block" ? body.lengthM * body.widthM : (Math.PI / 4) * body.diameterM ** 2;
}
