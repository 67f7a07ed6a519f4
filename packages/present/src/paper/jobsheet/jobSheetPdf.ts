import { tell } from "../../language/tell";
import { renderPdf } from "../pdf/renderPdf";
import { composeSheet } from "./composeSheet";
import type { JobSheetRequest } from "./JobSheetRequest";

/**
 * The Sheet as a PDF: two to four pages to tape to the wall and to hand on with the board. Every figure on it is the plan's. The
 * same request gives the same bytes.
 */
export function jobSheetPdf(request: JobSheetRequest): Promise<Uint8Array> {
  const { plan, reader, madeOn } = request;
  const t = tell(reader);
  const document = {
    title: t`${plan.name}: the Sheet`,
    subject: t`Dimensions, fin marks, lay-up, cups, steps and cautions of one board.`,
    language: reader.language,
    createdAt: madeOn.instant,
  };
  return renderPdf(document, (type) => composeSheet(request, type).pages);
}
