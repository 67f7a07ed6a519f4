import type { Surface } from "../../constants/finSetting";
import type { BoxTiming } from "../FinsInput";

const SURFACE_OF: Readonly<Record<BoxTiming, Surface>> = {
  "before-glass": "foam",
  "after-laminate": "laminate",
  "after-fill": "fill",
  "glassed-on": "laminate",
};

/** The surface that is there when boxes, or glassed-on fins, go in. */
export const usualSurface = (boxes: BoxTiming): Surface => SURFACE_OF[boxes];
