const ENTITIES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
/** What no XML 1.0 document can hold, even escaped (section 2.2): steering characters, half pairs and two non-characters. */
const NOT_XML = /[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu;
const REPLACEMENT = "\ufffd";

/** Text as it may stand in XML between tags or in a quoted attribute. */
export function escapeXml(text: string): string {
  return text
    .replace(NOT_XML, REPLACEMENT)
    .replace(/[&<>"]/g, (character) => ENTITIES[character] ?? character);
}
