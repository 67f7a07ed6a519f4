import { namePiece } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tellPhrase } from "../language/tellPhrase";

/** A piece of cloth as a person says it, after its board's name where several boards share a roll. */
export function pieceName(id: string, reader: Reader): string {
  const cut = id.lastIndexOf(" ");
  return `${id.slice(0, cut + 1)}${tellPhrase(namePiece(id.slice(cut + 1)), reader)}`;
}
