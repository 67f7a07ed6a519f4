import type { MaterialsInput } from "../materials/MaterialsInput";
import type { FittingsInput } from "./FittingsInput";
import type { BlankInput, GlassInput } from "./GlassInput";

/** The parts of a board that glass and resin are reckoned from. */
export interface LayupInput {
  readonly glass?: GlassInput | undefined;
  readonly blank?: BlankInput | undefined;
  readonly fins?: FittingsInput | undefined;
  readonly materials?: MaterialsInput | undefined;
}

/** The same where something is said of the glass. */
export interface ResolvedBoard extends LayupInput {
  readonly glass: GlassInput;
}
