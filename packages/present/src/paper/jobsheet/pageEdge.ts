import type { Item } from "../../drawing/Drawing";
import type { Tell } from "../../language/tell";
import type { PaperBlock } from "../pdf/PaperDocument";
import type { Typesetter } from "../pdf/Typesetter";
import { PAGE_SIZES } from "../sheet/PaperSize";
import type { JobSheetRequest } from "./JobSheetRequest";
import { MARGIN_MM, NOTE, STRONG } from "./look";
import { levelRule } from "./pieces/marks";
import { whoseWords } from "./whoseWords";

/** What head and foot of a page take. */
export const HEAD_MM = 8;
export const FOOT_MM = 6;

interface EdgeWords {
  readonly request: JobSheetRequest;
  readonly number: number;
  readonly of: number;
  readonly type: Typesetter;
  readonly t: Tell;
}

/** On every page: whose board, which page of how many, made by what and when, and who decides. */
export function pageEdgeBlocks({ request, number, of, type, t }: EdgeWords): {
  readonly head: readonly PaperBlock[];
  readonly foot: readonly PaperBlock[];
} {
  const { plan, paper, order, madeOn } = request;
  const { widthMm, heightMm } = PAGE_SIZES[paper];
  const [left, right] = [MARGIN_MM, widthMm - MARGIN_MM];
  const page = t`page ${number} of ${of}`;
  const measure = (text: string) => type.widthMm(text, STRONG);
  const roomMm = right - left - measure(page) - 6;
  const whose = whoseWords({ name: plan.name, serial: order?.serial }, roomMm, measure);
  const y = MARGIN_MM + STRONG.sizeMm * 0.86;
  const foot = heightMm - MARGIN_MM;
  const made = t`Lapline ${plan.engine}, ${madeOn.date}. The safety data sheets, local codes and a licensed person decide, not this page.`;
  return {
    head:
      number === 1
        ? []
        : [
            {
              tag: "P",
              items: [
                textItem(whose, { x: left, y }, STRONG),
                textItem(page, { x: right, y, anchor: "end" }, STRONG),
              ],
            },
            { tag: "Artifact", items: [levelRule({ x: left, y: MARGIN_MM + 5.2 }, right - left)] },
          ],
    foot: [
      {
        tag: "P",
        items: [
          textItem(made, { x: left, y: foot }, NOTE),
          textItem(page, { x: right, y: foot, anchor: "end" }, STRONG),
        ],
      },
    ],
  };
}

function textItem(
  text: string,
  { x, y, anchor = "start" }: { x: number; y: number; anchor?: "start" | "end" },
  { sizeMm, weight }: { sizeMm: number; weight: 400 | 600 },
): Item {
  return { kind: "text", text, at: { x, y }, sizeMm, anchor, role: weight === 600 ? "title" : "note" };
}
