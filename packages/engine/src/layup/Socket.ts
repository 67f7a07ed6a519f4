import type { Body } from "../geometry/bodyVolume";

/** A body let into the board with resin around it: a fin box or the leash plug. */
export interface Socket {
  /** `front-left`, `centre`, `leash-plug`. */
  readonly id: string;
  readonly kind: "box" | "plug";
  readonly body: Body;
  /** The fin's mark along the bottom; null for the plug. */
  readonly fromTailTapeM: number | null;
}
