import type { SourceId } from "../sources/sources";
import type { Sourced } from "./Sourced";

/** Magnus form of the vapour pressure over water, temperatures in °C. */
export const MAGNUS: { readonly a: number; readonly bC: number; readonly source: SourceId } = {
  a: 17.625,
  bC: 243.04,
  source: "alduchov-1996",
};

/** In damper air than this an epoxy that blushes does. */
export const BLUSH_HUMIDITY: Sourced = { value: 0.7, source: "common-practice" };

/** A surface is coated only while it is this much warmer than the dew point, in K. */
export const LEAST_OVER_DEW_POINT_K: Sourced = { value: 3, source: "common-practice" };
