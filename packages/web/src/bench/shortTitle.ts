import { type Reader, stepTitle } from "@lapline/present";
import type { BenchStep } from "./listCards";

/** A step's name without what is told of it behind a colon; a repair keeps its number with what is done. */
export function shortTitle(
  { id, title }: BenchStep,
  reader: Reader,
): { readonly name: string; readonly more: string } {
  const whole = stepTitle(title, reader);
  const cut = whole.indexOf(": ");
  if (cut === -1 || id.startsWith("repair-")) return { name: whole, more: "" };
  const more = whole.slice(cut + 2);
  return { name: whole.slice(0, cut), more: `${more.charAt(0).toUpperCase()}${more.slice(1)}.` };
}
