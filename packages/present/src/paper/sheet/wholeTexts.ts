import type { Drawing, Item, Point, TextItem } from "../../drawing/Drawing";
import { layOutDimension } from "../../drawing/layOutDimension";
import { boxAround, type SheetBox } from "../../drawing/SheetBox";
import { isWithin, quadsMeet, textQuad } from "../../drawing/textQuad";
import type { Rect } from "../pdf/PaperDocument";
import { moveItems } from "./moveItems";
import type { Tiling } from "./tilePart";
import { touches } from "./touches";

/**
 * The drawing with every text whole on at least one of its pages. One that a joint would cut on both is moved, the shortest way
 * and along its own line where that serves, into the part of the sheet that is one page's own; where it had to leave its place
 * by more than a step, a thin line leads back to it. Measures, marks and lines stay where they are.
 */
export function wholeTexts(drawing: Drawing, tiling: Tiling): Drawing {
  const layers = drawing.layers.map((layer) => ({ ...layer, items: layer.items.flatMap(partsOf) }));
  const windows = tiling.tiles.map(({ net }) => boxOf(windowOf(tiling, net)));
  const nets = tiling.tiles.map(({ net }) => inset(boxOf(net)));
  const items = layers.flatMap((layer) => layer.items);
  const texts = items.filter((item) => item.kind === "text");
  const cut = texts.filter((text) => !windows.some((window) => isWithin(textQuad(text), window)));
  if (cut.length === 0) return drawing;
  const taken = new Map(texts.map((text) => [text, textQuad(text)]));
  const lines = items.filter(({ kind }) => kind !== "text" && kind !== "hatch");
  const shifts = new Map<Item, Point>();
  for (const text of cut) {
    taken.delete(text);
    const shift = chooseShift(text, { nets, lines, taken: [...taken.values()] });
    taken.set(text, shifted(textQuad(text), shift));
    shifts.set(text, shift);
  }
  return {
    ...drawing,
    layers: layers.map((layer) => ({ ...layer, items: moveTexts(layer.items, shifts) })),
  };
}

/** A dimension's figure can be moved along its line like any other text. */
const partsOf = (item: Item): readonly Item[] => (item.kind === "dimension" ? layOutDimension(item) : [item]);

interface Around {
  readonly nets: readonly SheetBox[];
  readonly lines: readonly Item[];
  readonly taken: ReadonlyArray<readonly Point[]>;
}

const STEP_MM = 2;
const ALONG_MM = 100;
const BESIDE_MM = 24;
/** A text that leaves its own line is harder to belong to it, by so many millimetres of way. */
const OFF_LINE_MM = 12;
/** And one that lies over a line is harder to read. */
const CROSSED_MM = 6;

const stepsTo = (endMm: number): readonly number[] =>
  Array.from({ length: endMm / STEP_MM + 1 }, (_, i) => i * STEP_MM).flatMap((mm) => [mm, -mm]);

/** Ways that a text may go, along its line and beside it, the shortest first. */
const WAYS = stepsTo(BESIDE_MM)
  .flatMap((beside) =>
    stepsTo(ALONG_MM).map((along) => ({
      along,
      beside,
      costMm: Math.abs(along) + Math.abs(beside) + (beside === 0 ? 0 : OFF_LINE_MM),
    })),
  )
  .toSorted((a, b) => a.costMm - b.costMm);

/** The shortest way, counted with what speaks against it, to where it is whole and free; where there is none it stays. */
function chooseShift(text: TextItem, around: Around): Point {
  const quad = textQuad(text);
  const { turnRad = 0 } = text;
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  let best = { shift: { x: 0, y: 0 }, costMm: Number.POSITIVE_INFINITY };
  for (const { along, beside, costMm } of WAYS) {
    if (costMm >= best.costMm) break;
    const shift = { x: along * cos - beside * sin, y: along * sin + beside * cos };
    const there = shifted(quad, shift);
    if (!around.nets.some((net) => isWithin(there, net))) continue;
    if (around.taken.some((other) => quadsMeet(there, other))) continue;
    const dearer = costMm + CROSSED_MM * crossings(there, around.lines);
    if (dearer < best.costMm) best = { shift, costMm: dearer };
  }
  return best.shift;
}

function crossings(quad: readonly Point[], lines: readonly Item[]): number {
  const rect = rectOf(boxAround(quad));
  return lines.filter((item) => touches(item, rect)).length;
}

/** A text's white ground goes with it: it stands just before it. */
function moveTexts(items: readonly Item[], shifts: ReadonlyMap<Item, Point>): readonly Item[] {
  return items.flatMap((item, i): readonly Item[] => {
    const next = items[i + 1];
    const isGround = item.kind === "hatch" && item.hatch === "blank" && next?.kind === "text";
    const shift = shifts.get(isGround ? next : item);
    if (shift === undefined) return [item];
    const moved = moveItems([item], shift);
    return item.kind === "text" ? [...leader(item, shift), ...moved] : moved;
  });
}

/** Shorter moves, and those along the text's own line, need none. */
const LEADER_FROM_MM = 6;

function leader(text: TextItem, shift: Point): readonly Item[] {
  const { turnRad = 0 } = text;
  const offMm = Math.abs(shift.y * Math.cos(turnRad) - shift.x * Math.sin(turnRad));
  if (offMm < LEADER_FROM_MM) return [];
  const to = nearestOf(shifted(textQuad(text), shift), text.at);
  return [{ kind: "line", pen: "thin", tone: "graphite", from: text.at, to }];
}

function nearestOf(points: readonly Point[], { x, y }: Point): Point {
  return points.reduce((best, each) =>
    Math.hypot(each.x - x, each.y - y) < Math.hypot(best.x - x, best.y - y) ? each : best,
  );
}

const shifted = (points: readonly Point[], by: Point): readonly Point[] =>
  points.map(({ x, y }) => ({ x: x + by.x, y: y + by.y }));

/** What a page shows of the drawing, beyond its own part. */
export function windowOf({ page }: Pick<Tiling, "page">, net: Rect): Rect {
  return { ...page.window, x: net.x - (page.net.x - page.window.x), y: net.y - (page.net.y - page.window.y) };
}

const boxOf = ({ x, y, widthMm, heightMm }: Rect): SheetBox => ({
  left: x,
  right: x + widthMm,
  top: y,
  bottom: y + heightMm,
});

const rectOf = ({ left, right, top, bottom }: SheetBox): Rect => ({
  x: left,
  y: top,
  widthMm: right - left,
  heightMm: bottom - top,
});

const inset = ({ left, right, top, bottom }: SheetBox): SheetBox => ({
  left: left + 1,
  right: right - 1,
  top: top + 1,
  bottom: bottom - 1,
});
