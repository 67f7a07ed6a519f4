import type { OwnFoamInput, OwnWoodInput } from "./OwnBlankInput";
import type { OwnClothInput } from "./OwnClothInput";
import type { OwnFillerInput } from "./OwnFillerInput";
import type { OwnResinInput } from "./OwnResinInput";
import type { OwnTintInput } from "./OwnTintInput";

/** The builder's own records, by id; one with the id of a generic record takes its place. */
export interface MaterialsInput {
  readonly resins?: Readonly<Record<string, OwnResinInput>>;
  readonly cloths?: Readonly<Record<string, OwnClothInput>>;
  readonly foams?: Readonly<Record<string, OwnFoamInput>>;
  readonly fillers?: Readonly<Record<string, OwnFillerInput>>;
  readonly tints?: Readonly<Record<string, OwnTintInput>>;
  readonly woods?: Readonly<Record<string, OwnWoodInput>>;
}
