import type { Item, Point } from "../../../drawing/Drawing";
import { wrapToWidth } from "../../../drawing/wrapToWidth";
import { tell } from "../../../language/tell";
import type { PaperBlock, PaperPage } from "../../pdf/PaperDocument";
import type { TextStyle, Typesetter } from "../../pdf/Typesetter";
import { PAGE_SIZES } from "../../sheet/PaperSize";
import type { JobSheetRequest } from "../JobSheetRequest";
import { Ledger } from "../Ledger";
import { ACT, BODY, NOTE, STRONG } from "../look";
import { levelRule, rectangle } from "../pieces/marks";
import { whoseWords } from "../whoseWords";
import { type LabelCard, labelCards } from "./labelCards";

export interface ComposedLabels {
  readonly pages: readonly PaperPage[];
  readonly ledger: Ledger;
}

const ACROSS = 2;
const LABEL = { widthMm: 92, heightMm: 64 };
const PAD_MM = 4;
const FIGURE_ROW_MM = 6;
const NOTE_ROW_MM = 3.6;

/** Labels two beside each other, to be cut out along dashed lines and taped to cup and can. */
export function labelPages(request: JobSheetRequest, type: Typesetter): ComposedLabels {
  const { plan, reader, paper } = request;
  const size = PAGE_SIZES[paper];
  const ledger = new Ledger(plan, reader);
  const cards = labelCards(ledger);
  const down = Math.floor((size.heightMm - 16) / LABEL.heightMm);
  const onPage = ACROSS * down;
  const left = (size.widthMm - ACROSS * LABEL.widthMm) / 2;
  const top = (size.heightMm - down * LABEL.heightMm) / 2;
  const pages = Array.from({ length: Math.ceil(cards.length / onPage) }, (_, page): PaperPage => {
    const blocks = cards.slice(page * onPage, (page + 1) * onPage).map((card, i) => {
      const corner = {
        x: left + (i % ACROSS) * LABEL.widthMm,
        y: top + Math.floor(i / ACROSS) * LABEL.heightMm,
      };
      return labelBlock(card, corner, { request, type });
    });
    return { ...size, blocks };
  });
  return { pages, ledger };
}

interface LabelRoom {
  readonly request: JobSheetRequest;
  readonly type: Typesetter;
}

function labelBlock(card: LabelCard, { x, y }: Point, { request, type }: LabelRoom): PaperBlock {
  const t = tell(request.reader);
  const { plan, order, madeOn } = request;
  const [from, to] = [x + PAD_MM, x + LABEL.widthMm - PAD_MM];
  const foot = y + LABEL.heightMm - PAD_MM;
  const version = t`Lapline ${plan.engine}, ${madeOn.date}`;
  const made = plan.water.barred ? t`Not for water · ${version}` : version;
  const lines = wrapToWidth(card.cautions, to - from, (text) => type.widthMm(text, NOTE)).slice(
    0,
    CAUTION_LINES,
  );
  const cautionsFrom = foot - NOTE_ROW_MM * lines.length;
  const roomMm = to - from - type.widthMm(made, NOTE) - 3;
  const whose = whoseWords({ name: plan.name, serial: order?.serial }, roomMm, (part) =>
    type.widthMm(part, NOTE),
  );
  return {
    tag: "Sect",
    blocks: [
      { tag: "Artifact", items: [cutLine({ x, y })] },
      {
        tag: "H2",
        items: [
          text(card.title, { x: from, y: y + PAD_MM + 4 }, TITLE),
          text(card.which, { x: to, y: y + PAD_MM + 4 }, STRONG, "end"),
        ],
      },
      { tag: "P", items: figureItems(card, { x: from, y: y + PAD_MM + 5.5 }, to - from) },
      {
        tag: "P",
        items: blankItems(card.blanks, { x: from, y: cautionsFrom - 9 }, { type, widthMm: to - from }),
      },
      {
        tag: "P",
        items: lines.map((line, i) => text(line, { x: from, y: cautionsFrom - 4 + i * NOTE_ROW_MM }, NOTE)),
      },
      {
        tag: "P",
        items: [text(whose, { x: from, y: foot + 1 }, NOTE), text(made, { x: to, y: foot + 1 }, NOTE, "end")],
      },
    ],
  };
}

const TITLE: TextStyle = { sizeMm: 5, weight: 600 };
/** What a label has room for. */
const CAUTION_LINES = 4;
const FIGURES_AT_MOST = 4;

/** One under the other, or in two columns where a can serves many coats. */
function figureItems({ figures }: LabelCard, { x, y }: Point, widthMm: number): readonly Item[] {
  const isMany = figures.length > FIGURES_AT_MOST;
  const columnMm = isMany ? (widthMm - 6) / 2 : widthMm;
  const perColumn = isMany ? Math.ceil(figures.length / 2) : figures.length;
  return figures.flatMap(({ name, figure }, i) => {
    const left = x + Math.floor(i / perColumn) * (columnMm + 6);
    const foot = y + ((i % perColumn) + 1) * FIGURE_ROW_MM;
    return [
      text(name, { x: left, y: foot }, isMany ? NOTE : BODY),
      text(figure, { x: left + columnMm, y: foot }, isMany ? STRONG : ACT, "end"),
    ];
  });
}

/** Names, each with a line behind it to write on. */
function blankItems(
  names: readonly string[],
  { x, y }: Point,
  { type, widthMm }: { type: Typesetter; widthMm: number },
) {
  const stepMm = widthMm / names.length;
  return names.flatMap((name, i): Item[] => {
    const left = x + i * stepMm;
    const inMm = type.widthMm(name, NOTE) + 1.5;
    return [text(name, { x: left, y }, NOTE), levelRule({ x: left + inMm, y: y + 0.6 }, stepMm - inMm - 3)];
  });
}

const cutLine = (corner: Point): Item => ({
  kind: "polyline",
  closed: true,
  pen: "hidden",
  points: rectangle(corner, LABEL.widthMm, LABEL.heightMm),
});

function text(
  words: string,
  at: Point,
  { sizeMm, weight }: TextStyle,
  anchor: "start" | "end" = "start",
): Item {
  return { kind: "text", text: words, at, sizeMm, anchor, role: weight === 600 ? "figure" : "note" };
}
