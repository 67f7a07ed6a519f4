/** The `shop` part of a board file, in SI. */
export interface ShopInput {
  readonly temperature?:
    | { readonly dayK: number; readonly nightK: number }
    | ReadonlyArray<{ readonly at: string; readonly airK: number }>;
  readonly humidity?: number;
  readonly resinTemperatureK?: number;
  /** Local wall time, `2026-04-11T09:00`. */
  readonly start?: string;
  readonly hours?: { readonly from: string; readonly to: string };
  readonly stands?: number;
  readonly people?: number;
  readonly experience?: "first" | "some" | "trade";
  readonly rolls?: Readonly<Record<string, { readonly widthM?: number; readonly price?: number }>>;
}
