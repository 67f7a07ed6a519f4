import type { Surface } from "../../constants/finSetting";

/**
 * The figures a check was made for. One made for other figures than the plan's has to be made again: a box tried in one pocket says
 * nothing of another.
 */
export interface MadeFor {
  /** The surface that is there. */
  readonly on?: Surface;
  /** The pocket. */
  readonly lengthM?: number;
  readonly widthM?: number;
  readonly depthM?: number;
  readonly cantRad?: number;
  readonly baseM?: number;
}
