import type { GlassInput } from "../layup/GlassInput";
import type { MixEntry } from "./MixEntry";
import type { OutlinePoints } from "./placeCups";
import type { ShopAir } from "./ShopAir";

/** What all coats of a board have in common. */
export interface MixSetting {
  readonly air: ShopAir;
  readonly tint: NonNullable<GlassInput["tint"]>;
  /** The builder's own count; null without. */
  readonly dropsPerM3: number | null;
  /** The record as it stands. */
  readonly record: readonly MixEntry[];
  /** When each coat goes on, as wall times of the calendar; none while no days are planned. */
  readonly hours: ReadonlyMap<string, string>;
  /** From the tail on; none where the shape is not known. */
  readonly outline: OutlinePoints;
}
