import type { Template } from "./Template";

/** The template with one of its parts only; null where it has none of that name. */
export function pickPart(template: Template, id: string): Template | null {
  const parts = template.parts.filter((part) => part.id === id);
  return parts.length === 0 ? null : { ...template, parts };
}
