import type { PriceInput } from "../materials/PriceInput";

/** The `shop` part of a board file, in SI. */
export interface ShopInput {
  readonly temperature?:
    | { readonly dayK: number; readonly nightK: number }
    | ReadonlyArray<{ readonly at: string; readonly airK: number }>;
  readonly humidity?: number;
  readonly resinTemperatureK?: number;
  /** Local wall time, `2026-04-11T09:00`. */
  readonly start?: string;
  /** When the shop's clocks change, in order, by the wall: at `at`, as the old time reads, they go `byS` on. */
  readonly clockChanges?: ReadonlyArray<{ readonly at: string; readonly byS: number }>;
  readonly hours?: { readonly from: string; readonly to: string };
  readonly stands?: number;
  readonly people?: number;
  readonly experience?: "first" | "some" | "trade";
  /** The builder's own count of drops of hardener in a millilitre. */
  readonly dropsPerMl?: number;
  /** The smallest step that the scale for boards shows. */
  readonly scaleStepKg?: number;
  /** In the shop's own money, by the material's id. */
  readonly prices?: Readonly<Record<string, PriceInput>>;
  readonly rolls?: Readonly<Record<string, { readonly widthM?: number; readonly price?: number }>>;
}
