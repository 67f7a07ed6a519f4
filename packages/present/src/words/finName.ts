import { findText } from "../language/findText";
import type { Reader } from "../language/Reader";

/** A mark or a fin as a person says it: `front left`. */
export function finName(id: string, { language }: Reader): string {
  const told = language === "en" ? null : findText(id, language);
  return told ?? id.replaceAll("-", " ");
}
