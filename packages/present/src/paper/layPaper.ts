import { layWords, type SearchedLay } from "../cut/formatLayText";
import { rollDrawings } from "../cut/rollDrawings";
import type { Drawing, Layer } from "../drawing/Drawing";
import { drawingToSvg } from "../drawing/drawingToSvg";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { drawingPiece } from "./jobsheet/pieces/drawingPiece";
import { renderPdf } from "./pdf/renderPdf";
import type { FlowPiece } from "./sheet/flow/FlowPiece";
import { flowPieces } from "./sheet/flow/flowPieces";
import { TextPieces } from "./sheet/flow/textPieces";
import { moveItems } from "./sheet/moveItems";
import { PAGE_SIZES } from "./sheet/PaperSize";

export interface LayPaper {
  /** The boards that are cut for, as the title says them. */
  readonly boards: readonly string[];
  readonly lays: readonly SearchedLay[];
  /** Which of them are not for water, in sentences. */
  readonly barred: readonly string[];
  readonly reader: Reader;
}

const MARGIN_MM = 14;
const SVG_WIDTH_MM = 280;
const SVG_TITLE_MM = 5;
/** Low enough that each row of a roll stands alone and can go to the next page. */
const ONE_ROW_MM = 1;

/** How the pieces lie on their rolls, on A4 pages: what to buy in words, then the pictures. The same lays give the same bytes. */
export function layPdf({ boards, lays, barred, reader }: LayPaper, instant: Date): Promise<Uint8Array> {
  const t = tell(reader);
  const title = t`Cloth to cut: ${boards.join(", ")}`;
  const size = PAGE_SIZES.a4;
  const widthMm = size.widthMm - 2 * MARGIN_MM;
  const document = {
    title,
    subject: t`How the pieces of cloth lie on their rolls.`,
    language: reader.language,
    createdAt: instant,
  };
  return renderPdf(document, (type) => {
    const text = new TextPieces(type, widthMm);
    const pieces: FlowPiece[] = [
      text.title(title),
      ...barred.map((sentence) => text.paragraph(sentence)),
      ...lays.flatMap((lay) => [
        text.heading(lay.cloth),
        ...layWords(lay, reader).map((sentence) => text.paragraph(sentence)),
        ...rollDrawings(lay, { reader, widthMm, heightMm: ONE_ROW_MM }).map((drawing) =>
          drawingPiece({ ...drawing, notes: [] }, { alt: t`${lay.cloth} on its roll` }),
        ),
      ]),
      ...notesOnce(lays, reader).map((note) => text.paragraph(note)),
    ];
    const room = { x: MARGIN_MM, y: MARGIN_MM, widthMm, heightMm: size.heightMm - 2 * MARGIN_MM };
    return flowPieces(pieces, () => room).map((blocks) => ({ ...size, blocks }));
  });
}

/** How the pictures are to be read, each sentence once however many rolls there are. */
function notesOnce(lays: LayPaper["lays"], reader: Reader): readonly string[] {
  return [...new Set(lays.flatMap((lay) => rollDrawings(lay, { reader, widthMm: SVG_WIDTH_MM })[0].notes))];
}

/** The same as one picture. */
export function laySvg({ boards, lays, barred, reader }: LayPaper): string {
  const t = tell(reader);
  let y = SVG_TITLE_MM;
  const note = { kind: "text", sizeMm: 3.5, anchor: "start", role: "note" } as const;
  const heads = barred.map((text) => {
    y += SVG_TITLE_MM;
    return { ...note, at: { x: 2, y: y - SVG_TITLE_MM }, text };
  });
  const layers = lays.map((lay): Layer => {
    const [drawing] = rollDrawings(lay, { reader, widthMm: SVG_WIDTH_MM });
    const head = layWords(lay, reader).map((sentence, i) => ({
      ...note,
      at: { x: 2, y: y + i * SVG_TITLE_MM },
      text: sentence,
    }));
    y += head.length * SVG_TITLE_MM;
    const items = drawing.layers.flatMap((layer) => moveItems(layer.items, { x: 0, y }));
    y += drawing.heightMm + SVG_TITLE_MM;
    return { id: lay.cloth, items: [...head, ...items] };
  });
  const nought = { x: 0, y: 0 };
  const drawing: Drawing = {
    widthMm: SVG_WIDTH_MM,
    heightMm: y,
    frame: { origin: nought, alongMmPerM: nought, acrossMmPerM: nought },
    notes: [],
    layers: heads.length === 0 ? layers : [{ id: "state", items: heads }, ...layers],
  };
  return drawingToSvg(drawing, {
    title: t`Cloth to cut: ${boards.join(", ")}`,
    desc: t`How the pieces of cloth lie on their rolls.`,
    idPrefix: "lay",
    fontFamily: "Archivo, 'Helvetica Neue', Arial, sans-serif",
  });
}
