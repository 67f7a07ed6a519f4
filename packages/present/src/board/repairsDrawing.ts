import { length, type Plan } from "@lapline/engine";
import type { Drawing, Item, Point } from "../drawing/Drawing";
import type { DrawingOptions } from "../drawing/DrawingOptions";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { type Lay, placeOnBoard } from "./Lay";
import { edgeItem, edgeOf, stringerItem } from "./outlineItems";

type Repair = NonNullable<Plan["repairs"]>[number];
type Shape = NonNullable<Plan["shape"]>;

const FULL = { fromRad: 0, toRad: 2 * Math.PI } as const;
const RING_MM = 3;
const PATCHES_MM = 22;

/**
 * Where the repairs are on the board, face by face, and beneath for each the spot with what is laid over it, to one scale of its own: feather,
 * patches by layer, each with how wide it is.
 * @returns null without shape or without a repair that is still to do
 */
export function repairsDrawing(
  plan: Plan,
  { reader, widthMm, textMm = 3.5 }: DrawingOptions,
): Drawing | null {
  const { shape } = plan;
  const repairs = (plan.repairs ?? []).filter(({ done }) => !done);
  if (shape === null || repairs.length === 0) return null;
  const t = tell(reader);
  const faces = (["deck", "bottom"] as const).filter((face) => repairs.some((each) => each.face === face));
  let y = textMm * 1.5;
  const boards = faces.map((face) => {
    const lay = layBoard(shape, { face, widthMm, topMm: y });
    const items = boardItems(shape, lay, { repairs: repairs.filter((each) => each.face === face), textMm });
    const title = text(
      face === "deck" ? t`Deck` : t`Bottom, bottom up`,
      { x: 0.5, y: y - textMm * 0.3 },
      textMm,
    );
    y += lay.vTotalMm + textMm * 2;
    return { lay, items: [title, ...items] };
  });
  const details = repairs.map((repair) => {
    const items = detailItems(repair, { topMm: y, widthMm, textMm, reader });
    y += Math.max(2 * PATCHES_MM, (repair.layers.length + 4) * textMm * 1.5) + textMm;
    return { id: repair.id, items };
  });
  const [first] = boards;
  const along = first === undefined ? { x: 0, y: 0 } : placeOnBoard(first.lay, 1, 0);
  const origin = first === undefined ? { x: 0, y: 0 } : placeOnBoard(first.lay, 0, 0);
  const across = first === undefined ? { x: 0, y: 0 } : placeOnBoard(first.lay, 0, 1);
  return {
    widthMm,
    heightMm: y,
    frame: {
      origin,
      alongMmPerM: { x: along.x - origin.x, y: along.y - origin.y },
      acrossMmPerM: { x: across.x - origin.x, y: across.y - origin.y },
    },
    notes: [
      t`Rings on the board: where, with the repair's number, tail at the left. Beneath: the spot, and round it each patch from edge to edge.`,
    ],
    layers: [{ id: "boards", items: boards.flatMap(({ items }) => items) }, ...details],
  };
}

function layBoard(
  shape: Shape,
  { face, widthMm, topMm }: { readonly face: Lay["face"]; readonly widthMm: number; readonly topMm: number },
): Lay {
  const mmPerM = (widthMm - 2 * RING_MM) / shape.lengthM;
  const leftM = Math.max(...shape.outline.map((point) => point.leftM));
  const rightM = Math.max(...shape.outline.map((point) => point.rightM));
  const firstM = face === "deck" ? leftM : rightM;
  return {
    stands: false,
    face,
    mmPerM,
    uTotalMm: widthMm,
    vTotalMm: (leftM + rightM) * mmPerM,
    uTailMm: RING_MM,
    vStringerMm: topMm + firstM * mmPerM,
  };
}

function boardItems(
  shape: Shape,
  lay: Lay,
  { repairs, textMm }: { readonly repairs: readonly Repair[]; readonly textMm: number },
): Item[] {
  return [
    stringerItem(shape, lay, 1),
    edgeItem(edgeOf(shape.outline, shape.notch, lay)),
    ...repairs.flatMap((repair): Item[] => {
      const side = repair.side === "left" ? 1 : -1;
      const centre = placeOnBoard(lay, repair.fromTailM, side * repair.fromCentrelineM);
      const radiusMm = Math.max((repair.sizeM / 2) * lay.mmPerM, textMm * 0.7);
      return [
        { kind: "arc", centre, radiusMm, ...FULL, pen: "thick", tone: "lead" },
        text(numberOf(repair), { x: centre.x + radiusMm + 0.6, y: centre.y + textMm * 0.35 }, textMm),
      ];
    }),
  ];
}

const numberOf = ({ id }: Repair): string => id.replace("repair-", "");

interface DetailRoom {
  readonly topMm: number;
  readonly widthMm: number;
  readonly textMm: number;
  readonly reader: Reader;
}

/** The spot in the middle of its patches, the widest drawn as wide as there is room; words beside them, led to their edges. */
function detailItems(repair: Repair, { topMm, widthMm, textMm, reader }: DetailRoom): Item[] {
  const t = tell(reader);
  const show = (valueM: number) => showQuantity(length(valueM), reader);
  const featherM = repair.sizeM + 2 * repair.featherM;
  const rings: ReadonlyArray<{ readonly acrossM: number; readonly words: string; readonly isSpot?: true }> = [
    { acrossM: repair.sizeM, words: t`${repair.shows} shows, ${show(repair.sizeM)}`, isSpot: true },
    ...repair.layers.map(({ cloth, acrossM }, i) => ({
      acrossM,
      words: `${i + 1}: ${cloth}, ${show(acrossM)}`,
    })),
    ...(repair.featherM > 0 && repair.layers.length === 0
      ? [{ acrossM: featherM, words: t`feathered, ${show(featherM)}` }]
      : []),
    { acrossM: repair.fillAcrossM, words: t`fill coat, ${show(repair.fillAcrossM)}` },
  ];
  const widestM = Math.max(...rings.map(({ acrossM }) => acrossM));
  const radius = Math.min(PATCHES_MM - 1, widthMm * 0.22);
  const mmPerM = radius / (widestM / 2);
  const centre: Point = { x: radius + 1, y: topMm + PATCHES_MM };
  const wordsX = 2 * radius + 5;
  const head = text(
    t`Repair ${numberOf(repair)}, drawn 1 : ${Math.round(1000 / mmPerM)}`,
    { x: wordsX, y: topMm + textMm },
    textMm,
  );
  const rowMm = textMm * 1.5;
  return [
    ...rings.toReversed().flatMap(({ acrossM, isSpot }): Item[] => {
      const radiusMm = (acrossM / 2) * mmPerM;
      const hatch = isSpot ? ("proud" as const) : ("resin" as const);
      return [
        { kind: "hatch", hatch, points: circle(centre, radiusMm), ...(isSpot ? { tone: "lead" } : {}) },
        { kind: "arc", centre, radiusMm, ...FULL, pen: isSpot ? "thick" : "thin" },
      ];
    }),
    head,
    ...rings.flatMap(({ acrossM, words }, i): Item[] => {
      const y = topMm + textMm + (i + 1) * rowMm;
      const level = y - textMm * 0.35;
      const radiusMm = (acrossM / 2) * mmPerM;
      const dy = Math.max(-radiusMm * 0.9, Math.min(radiusMm * 0.9, level - centre.y));
      const from = { x: centre.x + Math.sqrt(radiusMm ** 2 - dy ** 2), y: centre.y + dy };
      return [
        { kind: "line", pen: "thin", from, to: { x: wordsX - 0.8, y: level } },
        text(words, { x: wordsX, y }, textMm),
      ];
    }),
  ];
}

const CORNERS = 48;

function circle({ x, y }: Point, radiusMm: number): readonly Point[] {
  return Array.from({ length: CORNERS }, (_, i) => {
    const turn = (2 * Math.PI * i) / CORNERS;
    return { x: x + radiusMm * Math.cos(turn), y: y + radiusMm * Math.sin(turn) };
  });
}

function text(words: string, at: Point, sizeMm: number): Item {
  return { kind: "text", text: words, at, sizeMm, anchor: "start", role: "note" };
}
