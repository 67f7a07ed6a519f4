import type { Item, Point } from "../drawing/Drawing";
import { FOAM_MM, LINE, type SkinColumn } from "./skinColumns";

/** One zone of the strip: its names, gloss, fill and laminate on the foam, its figures. */
export function skinColumnItems(
  column: SkinColumn,
  { textMm, mmPerM }: { readonly textMm: number; readonly mmPerM: number },
): readonly Item[] {
  const { left, right, foamY, zone, names, figures } = column;
  const band = (top: number, bottom: number): readonly Point[] => [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
  const laminate = foamY - zone.laminateThicknessM * mmPerM;
  const fill = laminate - zone.fillThicknessM * mmPerM;
  const gloss = fill - zone.glossThicknessM * mmPerM;
  const surface = (y: number): Item => ({
    kind: "line",
    pen: "thin",
    tone: "graphite",
    from: { x: left, y },
    to: { x: right, y },
  });
  const write = (y: number, role: "title" | "note", text: string): Item => ({
    kind: "text",
    at: { x: left, y },
    text,
    sizeMm: textMm,
    anchor: "start",
    role,
  });
  const lineMm = textMm * LINE;
  return [
    { kind: "hatch", hatch: "foam", points: band(foamY, foamY + FOAM_MM) },
    { kind: "hatch", hatch: "cloth", points: band(laminate, foamY) },
    { kind: "hatch", hatch: "resin", points: band(gloss, laminate) },
    ...[...new Set([gloss, fill, laminate])].map(surface),
    { kind: "line", pen: "thick", from: { x: left, y: foamY }, to: { x: right, y: foamY } },
    // The last line of the names lies close over its own skin, thin as that may be.
    ...names.map((name, i) => write(gloss - lineMm * (names.length - i - 1 + 0.4), "title", name)),
    ...figures.map((figure, i) => write(foamY + FOAM_MM + lineMm * (i + 1), "note", figure)),
  ];
}
