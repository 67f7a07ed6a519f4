import type { Item } from "../../../drawing/Drawing";
import type { FlowPiece } from "../../sheet/flow/FlowPiece";
import { heightOf } from "../../sheet/flow/flowPieces";
import { textPiece } from "../../sheet/flow/textPiece";
import { BODY } from "../look";
import { rectangle } from "./marks";
import { placeDown } from "./placeDown";
import type { SheetRoom } from "./SheetRoom";

export interface Strip {
  readonly title: string;
  readonly lines: readonly string[];
  /** Blockers are ruled aslant at both ends; what only is not ready yet stands on tape. */
  readonly isStop: boolean;
}

const PAD_MM = 1.7;
/** Out over the margin, across the edge of all that is drawn. */
const BEYOND_MM = 6;
const RULED_MM = 9;

/** A strip across the whole page and out over its margins, that nobody reads past. */
export function stopStrip({ title, lines, isStop }: Strip, { type, widthMm }: SheetRoom): FlowPiece {
  const insetMm = isStop ? RULED_MM - BEYOND_MM + 2 : 0;
  const room = { type, widthMm: widthMm - 2 * insetMm };
  const pieces = [
    textPiece(
      title,
      { tag: "P", sizeMm: isStop ? 6 : 4.4, weight: 600, gapMm: 0, ...(isStop ? { tone: "lead" } : {}) },
      room,
    ),
    ...lines.map((line) =>
      textPiece(
        line,
        { tag: "P", ...BODY, ...(isStop ? { sizeMm: 3.8, weight: 600 } : {}), gapMm: 0.2, leading: 1.24 },
        room,
      ),
    ),
  ];
  const heightMm = heightOf(pieces) + 2 * PAD_MM;
  return {
    heightMm,
    gapMm: 3,
    place: ({ x, y }) => {
      const [left, wideMm] = [x - BEYOND_MM, widthMm + 2 * BEYOND_MM];
      const edge = rectangle({ x: left, y }, wideMm, heightMm);
      const ends = [left, left + wideMm - RULED_MM + 1.5].map((at): Item => {
        return {
          kind: "hatch",
          hatch: "proud",
          tone: "lead",
          points: rectangle({ x: at, y }, RULED_MM - 1.5, heightMm),
        };
      });
      const line: Item = { kind: "polyline", closed: true, pen: "thick", tone: "lead", points: edge };
      const blocks = placeDown(pieces, { x: x + insetMm, y: y + PAD_MM });
      const under: readonly Item[] = isStop
        ? [...ends, line]
        : [{ kind: "hatch", hatch: "tape", points: edge }];
      return { tag: "Sect", blocks: [{ tag: "Artifact", items: under }, ...blocks] };
    },
  };
}
