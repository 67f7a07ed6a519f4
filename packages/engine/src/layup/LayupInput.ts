import type { MaterialsInput } from "../materials/MaterialsInput";
import type { RollsInput } from "../materials/RollsInput";
import type { FittingsInput } from "./FittingsInput";
import type { BlankInput, GlassInput } from "./GlassInput";

/** The parts of a board that glass and resin are reckoned from. */
export interface LayupInput {
  readonly glass?: GlassInput | undefined;
  readonly blank?: BlankInput | undefined;
  readonly fins?: FittingsInput | undefined;
  readonly materials?: MaterialsInput | undefined;
  /** A piece wider than its roll takes a seam. */
  readonly shop?: { readonly rolls?: RollsInput | undefined } | undefined;
}

/** The same where something is said of the glass. */
export interface ResolvedBoard extends LayupInput {
  readonly glass: GlassInput;
}
