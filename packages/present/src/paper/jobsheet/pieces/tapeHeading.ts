import type { Item, Point } from "../../../drawing/Drawing";
import type { FlowPiece } from "../../sheet/flow/FlowPiece";
import { HEADING } from "../look";
import type { SheetRoom } from "./SheetRoom";

const HEIGHT_MM = 6;
const PAD_MM = 3;
const TEETH = 5;
const TOOTH_MM = 0.9;

/** A part's name on a piece of masking tape, torn off at both ends, with the pencil line that it was laid along. */
export function tapeHeading(text: string, { type, widthMm }: SheetRoom): FlowPiece {
  return {
    heightMm: HEIGHT_MM,
    gapMm: 3.6,
    staysWithNext: true,
    place: ({ x, y }) => {
      const wideMm = type.widthMm(text, HEADING) + 2 * PAD_MM;
      const items: readonly Item[] = [
        {
          kind: "line",
          pen: "thin",
          tone: "graphite",
          from: { x, y: y + HEIGHT_MM },
          to: { x: x + widthMm, y: y + HEIGHT_MM },
        },
        { kind: "hatch", hatch: "tape", points: tornStrip({ x, y }, wideMm) },
        {
          kind: "text",
          role: "title",
          anchor: "start",
          sizeMm: HEADING.sizeMm,
          at: { x: x + PAD_MM, y: y + HEIGHT_MM - 1.5 },
          text,
        },
      ];
      return { tag: "H2", items };
    },
  };
}

function tornStrip({ x, y }: Point, wideMm: number): readonly Point[] {
  const teeth = Array.from({ length: TEETH * 2 + 1 }, (_, i) => ({
    inMm: i % 2 === 0 ? 0 : TOOTH_MM,
    downMm: (i / (TEETH * 2)) * HEIGHT_MM,
  }));
  return [
    ...teeth.map(({ inMm, downMm }) => ({ x: x + wideMm - inMm, y: y + downMm })),
    ...teeth.toReversed().map(({ inMm, downMm }) => ({ x: x + inMm, y: y + downMm })),
  ];
}
