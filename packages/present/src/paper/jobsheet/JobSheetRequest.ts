import type { Plan } from "@lapline/engine";
import type { Reader } from "../../language/Reader";
import type { MadeOn } from "../MadeOn";

/** What the Sheet and its labels are made from. */
export interface JobSheetRequest {
  readonly plan: Plan;
  /** Whose board it is and its number, as the board file has them. */
  readonly order?: { readonly rider?: string; readonly serial?: string };
  readonly reader: Reader;
  readonly paper: "a4" | "letter";
  /** Where the board's page stands; becomes the QR code. */
  readonly url?: string;
  readonly madeOn: MadeOn;
}
