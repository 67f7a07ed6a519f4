import type { SvgNode } from "@lapline/present";
import { createElement, type ReactNode } from "react";

/** A drawing's SVG as elements; React escapes every text in it. */
export function SvgTree({ node }: { node: SvgNode }): ReactNode {
  return createElement(
    node.tag,
    propsOf(node.attributes),
    ...node.children.map((child, i) =>
      // biome-ignore lint/suspicious/noArrayIndexKey: a part of a drawing is known by its place in it
      typeof child === "string" ? child : <SvgTree key={i} node={child} />,
    ),
  );
}

function propsOf(attributes: SvgNode["attributes"]): Record<string, string> {
  return Object.fromEntries(Object.entries(attributes).map(([name, value]) => [propName(name), value]));
}

/** React's name for an SVG attribute. */
function propName(attribute: string): string {
  if (attribute === "class") return "className";
  if (attribute.startsWith("aria-")) return attribute;
  return attribute.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
}
