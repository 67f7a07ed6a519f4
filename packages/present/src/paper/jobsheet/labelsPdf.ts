import { tell } from "../../language/tell";
import { renderPdf } from "../pdf/renderPdf";
import type { JobSheetRequest } from "./JobSheetRequest";
import { labelPages } from "./labels/labelPages";

/** Labels for every cup and each can of a board, to print, cut out and tape on; null where no cup is planned. */
export async function labelsPdf(request: JobSheetRequest): Promise<Uint8Array | null> {
  const { plan, reader, madeOn } = request;
  if (plan.mix === null || plan.mix.coats.every(({ cups }) => cups.length === 0)) return null;
  const t = tell(reader);
  const document = {
    title: t`${plan.name}: labels`,
    subject: t`Labels for the cups and cans of one board, to be cut out.`,
    language: reader.language,
    createdAt: madeOn.instant,
  };
  return renderPdf(document, (type) => labelPages(request, type).pages);
}
