import type { FinsFile } from "./FinsFile";
import type { BlankFile, GlassFile } from "./GlassFile";
import type { MaterialsFile } from "./MaterialsFile";
import type { QuantityText } from "./QuantityText";
import type { RecordEntryFile } from "./RecordEntryFile";
import type { ShopFile } from "./ShopFile";
import type { SurveyFile } from "./SurveyFile";

/** The JSON document that holds one board's input, as the contract fixes it. */
export interface BoardFile {
  readonly format: "lapline-board/1";
  readonly name: string;
  readonly order?: OrderFile;
  readonly survey: SurveyFile;
  readonly blank?: BlankFile;
  readonly glass?: GlassFile;
  readonly fins?: FinsFile;
  readonly shop?: ShopFile;
  readonly materials?: MaterialsFile;
  /** What happened, oldest first. */
  readonly record?: readonly RecordEntryFile[];
}

export interface OrderFile {
  readonly rider?: string;
  readonly riderMass?: QuantityText;
  readonly serial?: string;
}
