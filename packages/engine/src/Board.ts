import type { FinsInput } from "./finset/FinsInput";
import type { BlankInput, GlassInput } from "./layup/GlassInput";
import type { MaterialsInput } from "./materials/MaterialsInput";
import type { ShopInput } from "./mix/ShopInput";
import type { RecordEntry } from "./steps/RecordEntry";
import type { SurveyInput } from "./survey/SurveyInput";

/**
 * One board's input in SI: what was measured, chosen and done. The contract package reads it from a board file; what the
 * file leaves out stays out here, and the stage that needs it takes a default and says so.
 */
export interface Board {
  readonly name: string;
  readonly order?: { readonly rider?: string; readonly riderMassKg?: number; readonly serial?: string };
  readonly survey: SurveyInput;
  readonly blank?: BlankInput;
  readonly glass?: GlassInput;
  readonly fins?: FinsInput;
  readonly shop?: ShopInput;
  readonly materials?: MaterialsInput;
  readonly record?: readonly RecordEntry[];
}
