import type { Mesh } from "@lapline/engine";

/** A surveyed board as it goes into a file of its own. */
export interface Solid {
  /** The board's name. */
  readonly name: string;
  /** Version of the engine that made the mesh. */
  readonly engine: string;
  readonly mesh: Mesh;
}
