import type { Told } from "@lapline/engine";
import type { Reader } from "./Reader";
import { tellPhrase } from "./tellPhrase";
import { tellText } from "./tellText";

/** A text of a working in its reader's language: whole, or with what was put into it. */
export function tellTold(told: Told, reader: Reader): string {
  return typeof told === "string" ? tellText(told, reader) : tellPhrase(told, reader);
}
