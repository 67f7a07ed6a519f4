import type { TemplateForReader } from "./Template";

/** The template with one of its parts only; null where it has none of that name. */
export function pickPart(template: TemplateForReader, id: string): TemplateForReader | null {
  const parts = template.parts.filter((part) => part.id === id);
  return parts.length === 0 ? null : { ...template, parts };
}
