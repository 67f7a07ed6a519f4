import { tell } from "../language/tell";
import type { MadeOn } from "./MadeOn";
import { renderPdf } from "./pdf/renderPdf";
import type { PaperName } from "./sheet/PaperSize";
import { type RulerReads, TRUE_RULER } from "./sheet/RulerReads";
import { rollPages } from "./sheet/rollPages";
import { tiledPages } from "./sheet/tiledPages";
import type { TemplateForReader } from "./template/Template";

export interface TemplatePdfOptions {
  readonly paper: PaperName;
  readonly madeOn: MadeOn;
  /** What this printer makes of the rulers; true if left out. */
  readonly rulerReads?: RulerReads;
}

/**
 * A template as a PDF to print at 100 %: on pages that are joined by their trim marks, the first with a map of them and all that
 * must be read, or each part on one long sheet for a roll. Rulers, square check, board, version and page stand on every page.
 * @throws SheetTooLongError where one long sheet is longer than a PDF's page can be
 */
export function templatePdf(
  template: TemplateForReader,
  { paper, madeOn, rulerReads = TRUE_RULER }: TemplatePdfOptions,
): Promise<Uint8Array> {
  const t = tell(template.reader);
  const document = {
    title: t`${template.boardName}: ${template.title}, full size`,
    subject: t`Full-size template, to print at 100 %. ${template.orientation}`,
    language: template.reader.language,
    createdAt: madeOn.instant,
  };
  return renderPdf(document, (type) => {
    const making = { template, type, reads: rulerReads, date: madeOn.date };
    return paper === "roll" ? rollPages(making) : tiledPages(making, paper);
  });
}
