import type { Plan, Units } from "@lapline/engine";
import {
  buildTemplate,
  type PaperName,
  type RulerReads,
  type TemplateKind,
  templatePdf,
} from "../../src/paper";

const MADE_ON = { instant: new Date(Date.UTC(2026, 3, 11, 9)), date: "2026-04-11" };

export interface PdfRequest {
  readonly of: TemplateKind;
  readonly paper: PaperName;
  readonly units?: Units;
  readonly rulerReads?: RulerReads;
}

/** A template of a plan as a PDF. Throws where the plan has not got what it is drawn from. */
export async function makePdf(
  plan: Plan,
  { of, paper, units = "inch", rulerReads }: PdfRequest,
): Promise<Uint8Array> {
  const template = buildTemplate(plan, { of, reader: { units, language: "en" } });
  if (template === null) throw new Error(`no ${of} template`);
  const options = { paper, madeOn: MADE_ON };
  return templatePdf(template, rulerReads === undefined ? options : { ...options, rulerReads });
}
