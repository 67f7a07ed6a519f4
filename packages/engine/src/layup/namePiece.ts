import { type Phrase, say } from "../foundation/phrase";

const STRIP = /^((?:bottom|deck)-\d+)-(left|right)$/;
const PIECE = /^(bottom|deck|patch)-(\d+)$/;
const REPAIR = /^repair-(\d+)-(\d+)$/;
const FIN = /^fin-(.+)-(\d+)$/;

/** A piece of cloth, or one strip of it, as a person says it: `deck 2`, `patch 1`, `bottom 1, left strip`. */
export function namePiece(id: string): Phrase {
  const [, whole, side] = STRIP.exec(id) ?? [];
  if (whole !== undefined)
    return side === "left" ? say`${namePiece(whole)}, left strip` : say`${namePiece(whole)}, right strip`;
  const [, repair, layer = ""] = REPAIR.exec(id) ?? [];
  if (repair !== undefined) return say`repair ${repair}, patch ${layer}`;
  const [, fin, patch = ""] = FIN.exec(id) ?? [];
  if (fin !== undefined) return say`fin ${fin}, patch ${patch}`;
  const [, kind, number = ""] = PIECE.exec(id) ?? [];
  if (kind === "bottom") return say`bottom ${number}`;
  if (kind === "deck") return say`deck ${number}`;
  return kind === "patch" ? say`patch ${number}` : say`${id}`;
}
