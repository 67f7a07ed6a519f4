import type { Sourced } from "./Sourced";

/** Mean grain of the P grades of FEPA 43-1 and ISO 6344, coarse to fine. */
export const P_GRAIN_M = {
  P36: chart(538e-6),
  P40: chart(425e-6),
  P50: chart(336e-6),
  P60: chart(269e-6),
  P80: chart(201e-6),
  P100: chart(162e-6),
  P120: chart(125e-6),
  P150: chart(100e-6),
  P180: chart(82e-6),
  P220: chart(68e-6),
  P240: chart(58.5e-6),
  P280: chart(52.2e-6),
  P320: chart(46.2e-6),
  P360: chart(40.5e-6),
  P400: chart(35e-6),
  P500: chart(30.2e-6),
  P600: chart(25.8e-6),
  P800: chart(21.8e-6),
  P1000: chart(18.3e-6),
  P1200: chart(15.3e-6),
  P1500: chart(12.6e-6),
  P2000: chart(10.3e-6),
  P2500: chart(8.4e-6),
} as const satisfies Record<string, Sourced>;

export type Grit = keyof typeof P_GRAIN_M;

/** The P grades by name, coarse to fine. */
export const GRITS = Object.keys(P_GRAIN_M) as readonly Grit[];

/** Mean grain of the US grades without a P, which are another scale. */
export const US_GRAIN_M = {
  "80": chart(192e-6),
  "120": chart(116e-6),
  "180": chart(78e-6),
  "220": chart(66e-6),
  "320": chart(36e-6),
  "400": chart(23e-6),
  "600": chart(16e-6),
  "1000": chart(10.3e-6),
} as const satisfies Record<string, Sourced>;

/** Within this share of the grain a US grade stands for a P grade. */
export const SAME_GRAIN_SHARE: Sourced = { value: 0.1, source: "convention" };

function chart(value: number): Sourced {
  return { value, source: "fepa-chart" };
}
