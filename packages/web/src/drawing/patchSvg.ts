import type { SvgNode } from "@lapline/present";

type Child = SvgNode | string;

const SVG = "http://www.w3.org/2000/svg";

/**
 * Makes an element what a drawing says of it, where it was made by the one before. Only what differs is touched, so that a key
 * that moves one curve costs little more than that curve; every text stays text.
 */
export function patchSvg(element: Element, before: SvgNode | null, node: SvgNode): void {
  patchAttributes(element, before?.attributes ?? {}, node.attributes);
  const known = before?.children ?? [];
  node.children.forEach((child, i) => {
    const there = element.childNodes[i];
    if (there === undefined) element.append(make(element, child));
    else patchChild(element, there, { before: known[i], child });
  });
  while (element.childNodes.length > node.children.length) element.lastChild?.remove();
}

function patchAttributes(
  element: Element,
  before: SvgNode["attributes"],
  attributes: SvgNode["attributes"],
): void {
  for (const name in attributes) {
    const value = attributes[name];
    if (value !== undefined && value !== before[name]) element.setAttribute(name, value);
  }
  for (const name in before) if (attributes[name] === undefined) element.removeAttribute(name);
}

function patchChild(
  element: Element,
  there: ChildNode,
  { before, child }: { before: Child | undefined; child: Child },
): void {
  if (before === child) return;
  if (typeof before === "object" && typeof child === "object" && before.tag === child.tag)
    patchSvg(there as Element, before, child);
  else there.replaceWith(make(element, child));
}

function make({ ownerDocument }: Element, child: Child): Node {
  if (typeof child === "string") return ownerDocument.createTextNode(child);
  const element = ownerDocument.createElementNS(SVG, child.tag);
  patchSvg(element, null, child);
  return element;
}
