import type { Plan } from "@lapline/engine";
import type { Reader } from "../../language/Reader";
import { tellText } from "../../language/tellText";
import { barredSentence } from "../../words/waterWords";
import { clothTemplate } from "./cloth/clothTemplate";
import { finsTemplate } from "./fins/finsTemplate";
import { outlineTemplate } from "./outline/outlineTemplate";
import type { Template, TemplateForReader, TemplateKind } from "./Template";

export interface TemplateRequest {
  readonly of: TemplateKind;
  readonly reader: Reader;
}

/** The full-size template asked for, from the plan alone; null where the plan has not got the stage it is drawn from. */
export function buildTemplate(plan: Plan, request: TemplateRequest): TemplateForReader | null {
  const { reader } = request;
  const template = drawTemplate(plan, request);
  if (template === null) return null;
  const cautions = template.cautions.map((caution) => tellText(caution, reader));
  return { ...template, cautions, reader, barred: barredSentence(plan, reader) };
}

function drawTemplate(plan: Plan, { of, reader }: TemplateRequest): Template | null {
  const { shape, finset, layup } = plan;
  switch (of) {
    case "fins":
      if (shape === null || finset === null || finset.marks.length === 0) return null;
      return finsTemplate(plan, { shape, finset }, reader);
    case "outline":
      return shape === null ? null : outlineTemplate(plan, shape, reader);
    case "cloth":
      return layup === null || layup.pieces.length === 0 ? null : clothTemplate(plan, layup, reader);
  }
}
