import { type Reader, tell } from "@lapline/present";
import type { ColourBand, ColouringId } from "./Colouring";

/** A step of a scale in words and numbers; in millimetres in both systems, since it is finer than the marks of an inch tape. */
export function bandWords(id: ColouringId, { fromM, toM }: ColourBand, reader: Reader): string {
  const t = tell(reader);
  if (id === "film") {
    return fromM === null ? t`through: no film left` : t`${thousandths(fromM)} to ${thousandths(toM)} µm`;
  }
  const [from, to] = [millimetres(fromM), millimetres(toM)];
  if (id === "skin") return t`${from} to ${to} mm`;
  if (fromM === null) return t`more than ${to} mm narrower`;
  if (toM === null) return t`more than ${from} mm fuller`;
  if (fromM < 0 && toM > 0) return t`alike, within ${to} mm`;
  return fromM < 0 ? t`${to} to ${from} mm narrower` : t`${from} to ${to} mm fuller`;
}

/** How the colours are to be read. */
export function howDrawn(id: ColouringId, reader: Reader): string {
  const t = tell(reader);
  if (id === "difference")
    return t`Each half is coloured by how much fuller or narrower it is than the other half at the same distance from the tail, stringer to rail.`;
  if (id === "film")
    return t`Film after the last paper: the plan's numbers at the rails and on the flats, drawn evenly between over the lap's width. The boxes' own stand in the table by zone.`;
  return t`Laminate, fill and gloss together. Each zone's number stands for all of it: the rail is drawn as the outer quarter of the lap.`;
}

/** Steps are round: what binary fractions add to them goes. */
const round = (value: number): number => Number(Math.abs(value).toFixed(3));
const millimetres = (valueM: number | null): number => round((valueM ?? 0) * 1e3);
const thousandths = (valueM: number | null): number => round((valueM ?? 0) * 1e6);
