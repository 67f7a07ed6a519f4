import type { Units } from "@lapline/engine";
import type { Language } from "./Language";

/** Who a text is made for: the system of length they read in, and their language. */
export interface Reader {
  readonly units: Units;
  readonly language: Language;
}
