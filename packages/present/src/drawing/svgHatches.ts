import type { Hatch } from "./Drawing";
import type { SvgNode } from "./SvgNode";

type PatternedHatch = Exclude<Hatch, "solid" | "blank" | "resin" | "tape">;

/** The hatches that are drawn by a repeated tile, each a function of the id that the tile gets. */
export const HATCH_PATTERNS: Readonly<Record<PatternedHatch, (id: string) => SvgNode>> = {
  foam: (id) => tile(id, 3, [ground("foam", "#ffffff"), dot(0.7, 0.8), dot(2.2, 2.1)]),
  cloth: (id) => tile(id, 1.2, [ground("cloth", "#ffffff"), rule("M0 0.6H1.2M0.6 0V1.2", 0.16)]),
  proud: (id) => tile(id, 1, [rule("M-0.25 0.25L0.25 -0.25M0 1L1 0M0.75 1.25L1.25 0.75", 0.22)]),
};

function tile(id: string, sizeMm: number, children: readonly SvgNode[]): SvgNode {
  return {
    tag: "pattern",
    attributes: { id, width: String(sizeMm), height: String(sizeMm), patternUnits: "userSpaceOnUse" },
    children,
  };
}

function ground(hatch: string, fill: string): SvgNode {
  return {
    tag: "rect",
    attributes: { class: `ground-${hatch}`, width: "100%", height: "100%", fill },
    children: [],
  };
}

function dot(x: number, y: number): SvgNode {
  return {
    tag: "circle",
    attributes: { class: "hatch-mark", cx: String(x), cy: String(y), r: "0.16", fill: "currentColor" },
    children: [],
  };
}

function rule(d: string, widthMm: number): SvgNode {
  return {
    tag: "path",
    attributes: {
      class: "hatch-mark",
      d,
      fill: "none",
      stroke: "currentColor",
      "stroke-width": String(widthMm),
    },
    children: [],
  };
}
