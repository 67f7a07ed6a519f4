import type { QuantityText } from "./QuantityText";

export interface ShopFile {
  readonly temperature?: DayAndNightFile | readonly AirReadingFile[];
  readonly humidity?: QuantityText;
  readonly resinTemperature?: QuantityText;
  /** Local wall time, `2026-04-11T09:00`. */
  readonly start?: string;
  /** IANA name, so that hours pass as they do where clocks change. */
  readonly timeZone?: string;
  readonly hours?: { readonly from: string; readonly to: string };
  readonly stands?: number;
  readonly people?: number;
  readonly experience?: "first" | "some" | "trade";
  /** The builder's own count for their bottle: published hints disagree by a factor of 2.5. */
  readonly dropsPerMl?: number;
  /** The smallest step that the scale for boards shows. */
  readonly scale?: QuantityText;
  /** In the shop's own money, by id: a cloth, a resin, `polyester-hardener`, `wax`, `tint`, `box`, `box-centre`, `leash-plug`, a foam. */
  readonly prices?: Readonly<Record<string, PriceFile>>;
  /** By the cloth's id. */
  readonly rolls?: Readonly<Record<string, RollFile>>;
}

interface DayAndNightFile {
  readonly day: QuantityText;
  readonly night: QuantityText;
}

export interface AirReadingFile {
  readonly at: string;
  readonly air: QuantityText;
}

export interface RollFile {
  readonly width?: QuantityText;
  /** For a metre off the roll, in the shop's own money. */
  readonly price?: number;
}

export interface PriceFile {
  /** Of a pack; of a metre for cloth without a pack. */
  readonly price: number;
  /** What is in it: a mass, a volume or, for cloth, a length. */
  readonly pack?: QuantityText;
  /** How many are in it. */
  readonly pieces?: number;
  /** How many this board takes, of something that the plan does not reckon. */
  readonly use?: number;
}
