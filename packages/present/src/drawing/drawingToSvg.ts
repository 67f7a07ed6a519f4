import type { Drawing } from "./Drawing";
import { drawingToSvgNode, type SvgNames } from "./drawingToSvgNode";
import type { SvgNode } from "./SvgNode";

/** The drawing as a file of its own: true to scale when printed at 100 %, every text and attribute escaped. */
export function drawingToSvg(drawing: Drawing, names: SvgNames): string {
  return writeNode(drawingToSvgNode(drawing, names));
}

function writeNode(node: SvgNode): string {
  const attributes = Object.entries(node.attributes).map(([name, value]) => ` ${name}="${escapeXml(value)}"`);
  const open = `<${node.tag}${attributes.join("")}`;
  if (node.children.length === 0) return `${open}/>`;
  const inner = node.children.map((child) =>
    typeof child === "string" ? escapeXml(child) : writeNode(child),
  );
  return `${open}>${inner.join("")}</${node.tag}>`;
}

const ESCAPES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Characters that XML 1.0 does not allow at all, even escaped. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: it is these that are taken out
const NOT_XML = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]/g;

function escapeXml(text: string): string {
  return text.replace(NOT_XML, "").replace(/[&<>"']/g, (character) => ESCAPES[character] ?? character);
}
