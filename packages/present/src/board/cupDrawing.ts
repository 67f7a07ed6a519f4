import type { Plan } from "@lapline/engine";
import type { Drawing, Item, Point } from "../drawing/Drawing";

type MixCoat = NonNullable<Plan["mix"]>["coats"][number];

const CUP = { stepMm: 17, topMm: 13, bottomMm: 9.5, tallMm: 15, marginMm: 1 } as const;
const NUMBER_MM = 4;
/** A full cup is drawn to this share of its height. */
const FULLEST = 0.8;

/**
 * A coat's cups in the order they are used, each drawn to its fill against the plan's largest cup; where no cup can be
 * mixed, one empty cup crossed out.
 */
export function cupDrawing(coat: MixCoat, mix: NonNullable<Plan["mix"]>): Drawing {
  const largestKg = Math.max(...mix.coats.flatMap((each) => each.cups.map((cup) => cup.mixedMassKg)), 0);
  const isNumbered = coat.cups.length > 1;
  const cups = coat.cups.map((cup, i) => cupItems(i, (FULLEST * cup.mixedMassKg) / largestKg));
  return {
    widthMm: Math.max(1, cups.length) * CUP.stepMm,
    heightMm: CUP.tallMm + 2 * CUP.marginMm + (isNumbered ? NUMBER_MM * 1.4 : 0),
    frame: { origin: { x: 0, y: 0 }, alongMmPerM: { x: 0, y: 0 }, acrossMmPerM: { x: 0, y: 0 } },
    notes: [],
    layers: [
      { id: "cups", items: cups.length > 0 ? cups.flat() : [...cupItems(0, 0), ...crossItems()] },
      ...(isNumbered ? [{ id: "order", items: coat.cups.map((_, i) => numberItem(i)) }] : []),
    ],
  };
}

function cupItems(index: number, fill: number): readonly Item[] {
  const rim = wall(index, 1);
  const floor = wall(index, 0);
  const level = wall(index, fill);
  const edge = [rim.left, floor.left, floor.right, rim.right];
  return [
    ...(fill > 0
      ? [
          {
            kind: "hatch",
            hatch: "resin",
            points: [level.left, floor.left, floor.right, level.right],
          } as const,
          { kind: "line", pen: "thin", tone: "graphite", from: level.left, to: level.right } as const,
        ]
      : []),
    { kind: "polyline", closed: false, pen: "thick", points: edge },
  ];
}

/** The two sides of a cup at a share of its height. */
function wall(index: number, share: number): { readonly left: Point; readonly right: Point } {
  const middle = index * CUP.stepMm + CUP.stepMm / 2;
  const half = (CUP.bottomMm + (CUP.topMm - CUP.bottomMm) * share) / 2;
  const y = CUP.marginMm + CUP.tallMm * (1 - share);
  return { left: { x: middle - half, y }, right: { x: middle + half, y } };
}

/** Which cup it is, in the order they are mixed. */
function numberItem(index: number): Item {
  return {
    kind: "text",
    at: { x: (index + 0.5) * CUP.stepMm, y: 2 * CUP.marginMm + CUP.tallMm + NUMBER_MM },
    text: String(index + 1),
    sizeMm: NUMBER_MM,
    anchor: "middle",
    role: "figure",
  };
}

function crossItems(): readonly Item[] {
  const [rim, floor] = [wall(0, 1), wall(0, 0)];
  return [
    { kind: "line", pen: "thick", tone: "lead", from: rim.left, to: floor.right },
    { kind: "line", pen: "thick", tone: "lead", from: rim.right, to: floor.left },
  ];
}
