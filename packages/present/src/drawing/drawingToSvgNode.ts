import type { ArcItem, Drawing, Hatch, HatchItem, Item, Point, TextItem } from "./Drawing";
import { formatCoordinate } from "./formatCoordinate";
import { layOutDimension } from "./layOutDimension";
import { PENS, type Pen, type Tone } from "./Pen";
import type { SvgNode } from "./SvgNode";
import { splitFractions } from "./splitFractions";
import { HATCH_PATTERNS } from "./svgHatches";

export interface SvgNames {
  /** What the drawing shows, in a few words. */
  readonly title: string;
  /** What a person who cannot see it should know. */
  readonly desc: string;
  /** Makes the ids inside unique where several drawings share a page. */
  readonly idPrefix?: string;
  /** For a file that stands alone; on a page the style sheet says it. */
  readonly fontFamily?: string;
}

/**
 * The drawing as one SVG element in millimetres, with an image role, a title and a description.
 *
 * Line widths and dashes stand as attributes, so that the file is right on its own; each piece also carries a class for
 * its pen, tone or hatch, which a style sheet may override. There is no style attribute and no script in it.
 */
export function drawingToSvgNode(drawing: Drawing, names: SvgNames): SvgNode {
  const prefix = names.idPrefix ?? "drawing";
  return node(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${formatCoordinate(drawing.widthMm)} ${formatCoordinate(drawing.heightMm)}`,
      width: `${formatCoordinate(drawing.widthMm)}mm`,
      height: `${formatCoordinate(drawing.heightMm)}mm`,
      role: "img",
      "aria-labelledby": `${prefix}-title ${prefix}-desc`,
      class: "drawing",
      ...(names.fontFamily === undefined ? {} : { "font-family": names.fontFamily }),
    },
    [
      node("title", { id: `${prefix}-title` }, [names.title]),
      node("desc", { id: `${prefix}-desc` }, [[names.desc, ...drawing.notes].join(" ")]),
      node(
        "defs",
        {},
        hatchesUsed(drawing).map((hatch) => HATCH_PATTERNS[hatch](`${prefix}-${hatch}`)),
      ),
      ...drawing.layers.map((layer) =>
        node(
          "g",
          { class: `layer-${layer.id}` },
          layer.items.flatMap((item) => itemNodes(item, prefix)),
        ),
      ),
    ],
  );
}

function itemNodes(item: Item, prefix: string): readonly SvgNode[] {
  switch (item.kind) {
    case "line":
      return [node("path", stroke(item.pen, item.tone, pathThrough([item.from, item.to], false)))];
    case "polyline":
      return [node("path", stroke(item.pen, item.tone, pathThrough(item.points, item.closed)))];
    case "arc":
      return [node("path", stroke(item.pen, item.tone, arcPath(item)))];
    case "hatch":
      return [hatchNode(item, prefix)];
    case "text":
      return [textNode(item)];
    case "dimension":
      return [
        node(
          "g",
          { class: "dimension" },
          layOutDimension(item).flatMap((part) => itemNodes(part, prefix)),
        ),
      ];
  }
}

function stroke(pen: Pen, tone: Tone | undefined, d: string): Record<string, string> {
  const style = PENS[pen];
  return {
    class: `pen-${pen} ink-${tone ?? style.tone}`,
    d,
    fill: "none",
    stroke: "currentColor",
    "stroke-width": formatCoordinate(style.widthMm),
    "stroke-linejoin": "round",
    ...(style.dashesMm.length > 0
      ? { "stroke-dasharray": style.dashesMm.map(formatCoordinate).join(" ") }
      : {}),
  };
}

function hatchNode(item: HatchItem, prefix: string): SvgNode {
  const fill = PLAIN_FILLS[item.hatch] ?? `url(#${prefix}-${item.hatch})`;
  const tone = item.tone === undefined ? "" : ` ink-${item.tone}`;
  return node("path", { class: `hatch-${item.hatch}${tone}`, d: pathThrough(item.points, true), fill });
}

/** What needs no pattern; a style sheet may give each another colour. */
const PLAIN_FILLS: Partial<Record<Hatch, string>> = {
  solid: "currentColor",
  blank: "#ffffff",
  resin: "#e0a030",
  tape: "#c9d3da",
};

function hatchesUsed(drawing: Drawing): Array<keyof typeof HATCH_PATTERNS> {
  const used = new Set<string>();
  for (const layer of drawing.layers) {
    for (const item of layer.items) if (item.kind === "hatch") used.add(item.hatch);
  }
  return (Object.keys(HATCH_PATTERNS) as Array<keyof typeof HATCH_PATTERNS>).filter((hatch) =>
    used.has(hatch),
  );
}

function textNode(item: TextItem): SvgNode {
  const turned = item.turnRad !== undefined && item.turnRad !== 0;
  const degrees = turned ? formatCoordinate(((item.turnRad ?? 0) * 180) / Math.PI) : "0";
  const [x, y] = [formatCoordinate(item.at.x), formatCoordinate(item.at.y)];
  return node(
    "text",
    {
      class: `text-${item.role} ink-${item.tone ?? "graphite"}`,
      x,
      y,
      "font-size": formatCoordinate(item.sizeMm),
      "text-anchor": item.anchor,
      ...(item.role === "note" ? {} : { "font-weight": "600" }),
      fill: "currentColor",
      ...(turned ? { transform: `rotate(${degrees} ${x} ${y})` } : {}),
    },
    splitFractions(item.text).map((part) =>
      part.isFraction ? node("tspan", { class: "fraction" }, [part.text]) : part.text,
    ),
  );
}

function pathThrough(points: readonly Point[], closed: boolean): string {
  const steps = points.map(
    (point, i) => `${i === 0 ? "M" : "L"}${formatCoordinate(point.x)} ${formatCoordinate(point.y)}`,
  );
  return steps.join("") + (closed ? "Z" : "");
}

function arcPath(arc: ArcItem): string {
  const at = (angleRad: number): string =>
    `${formatCoordinate(arc.centre.x + arc.radiusMm * Math.cos(angleRad))} ${formatCoordinate(arc.centre.y + arc.radiusMm * Math.sin(angleRad))}`;
  const radius = formatCoordinate(arc.radiusMm);
  const isClockwise = arc.toRad > arc.fromRad ? 1 : 0;
  const arcTo = (toRad: number) => `A${radius} ${radius} 0 0 ${isClockwise} ${at(toRad)}`;
  const isLarge = Math.abs(arc.toRad - arc.fromRad) > Math.PI;
  // A large one in two halves: one that came back to its own start would not be drawn at all.
  const halfway = isLarge ? arcTo((arc.fromRad + arc.toRad) / 2) : "";
  return `M${at(arc.fromRad)}${halfway}${arcTo(arc.toRad)}`;
}

function node(
  tag: string,
  attributes: Record<string, string>,
  children: ReadonlyArray<SvgNode | string> = [],
): SvgNode {
  return { tag, attributes, children };
}
