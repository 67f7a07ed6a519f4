import type { Item } from "../../../drawing/Drawing";
import type { FlowPiece } from "../../sheet/flow/FlowPiece";
import { heightOf } from "../../sheet/flow/flowPieces";
import { textPiece } from "../../sheet/flow/textPiece";
import { BODY, LONG_TITLE, NOTE, TITLE } from "../look";
import { placeDown } from "./placeDown";
import { qrItems } from "./qrItems";
import type { SheetRoom } from "./SheetRoom";

export interface TitleWords {
  readonly name: string;
  /** Rider, serial, date. */
  readonly facts: readonly string[];
  readonly url?: { readonly address: string; readonly says: string };
}

/** A name with more letters than this is set smaller. */
const LONG_NAME = 34;
const QR_MM = 24;

/** Whose board it is, as large as the page bears, with the code of its page at the right. */
export function titlePiece({ name, facts, url }: TitleWords, { type, widthMm }: SheetRoom): FlowPiece {
  const besideMm = url === undefined ? 0 : QR_MM + 4;
  const room = { type, widthMm: widthMm - besideMm };
  const title = name.length > LONG_NAME ? LONG_TITLE : TITLE;
  const pieces = [
    textPiece(name, { tag: "H1", ...title, gapMm: 0 }, room),
    ...facts.map((fact) => textPiece(fact, { tag: "P", ...BODY, gapMm: 1 }, room)),
    ...(url === undefined
      ? []
      : [textPiece(`${url.says} ${url.address}`, { tag: "P", ...NOTE, gapMm: 1.5 }, room)]),
  ];
  return {
    heightMm: Math.max(heightOf(pieces), url === undefined ? 0 : QR_MM),
    gapMm: 0,
    place: ({ x, y }) => {
      const blocks = placeDown(pieces, { x, y });
      if (url === undefined) return { tag: "Sect", blocks };
      const code: readonly Item[] = qrItems(url.address, { x: x + widthMm - QR_MM, y }, QR_MM);
      return {
        tag: "Sect",
        blocks: [...blocks, { tag: "Figure", alt: `${url.says} ${url.address}`, items: code }],
      };
    },
  };
}
