import type { Resin } from "./Resin";
import type { Sourced } from "./Sourced";

type Ranged = Required<Sourced>;

/** Heat set free by a whole cure, J/kg, and what a kilogram of the liquid takes for each kelvin, J/(kg K). */
export const CURE_HEAT: Readonly<
  Record<Exclude<Resin["kind"], "sunlight">, { readonly heatJKg: Ranged; readonly capacityJKgK: Ranged }>
> = {
  peroxide: {
    heatJKg: { value: 350_000, low: 300_000, high: 400_000, source: "polyester-memory" },
    capacityJKgK: { value: 1850, low: 1700, high: 2000, source: "polyester-memory" },
  },
  "two-part": {
    heatJKg: { value: 400_000, low: 300_000, high: 500_000, source: "epoxy-memory" },
    capacityJKgK: { value: 1900, low: 1700, high: 2100, source: "epoxy-memory" },
  },
};

/** Still air and radiation off a cup, W/(m² K). */
export const CUP_HEAT_TRANSFER: Ranged = { value: 10, low: 5, high: 15, source: "still-air-memory" };

/** A cup is drawn and cooled as a cylinder as tall as it is wide, cooled by wall and top, standing on a board that takes none. */
export const CUP_TALL_OVER_WIDE: Sourced = { value: 1, source: "convention" };

/** From so many gel times of cooling on a cup left standing is called warm, and hot: the heat cannot leave as fast as it comes. */
export const HEAT_CLASSES = {
  warm: { value: 0.5, source: "convention" },
  hot: { value: 1, source: "convention" },
} as const satisfies Record<string, Sourced>;
