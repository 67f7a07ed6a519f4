import type { Plan } from "@lapline/engine";
import type { Drawing, Item, Point } from "../drawing/Drawing";
import { laidCoats, type SkinFace } from "../words/laidCoats";

/** Every board's skin is drawn this many times, so that those side by side compare. */
export const LAID_SKIN_TIMES = 8;

const FOAM_MM = 5;
const LEAST_ROOM_MM = 4;
const MM_PER_M = 1000;

/**
 * A short piece through the middle of the board: foam between deck and bottom, the layers that the record says are laid to
 * scale in thickness, those still to come as an empty line. Null where the lay-up could not be built.
 */
export function laidSkinDrawing(plan: Plan, { widthMm }: { readonly widthMm: number }): Drawing | null {
  const zones = plan.layup?.zones;
  const deck = zones?.find(({ id }) => id === "deck");
  const bottom = zones?.find(({ id }) => id === "bottom");
  if (deck === undefined || bottom === undefined) return null;
  const above = Math.max(LEAST_ROOM_MM, skinMm(deck)) + 0.5;
  const below = Math.max(LEAST_ROOM_MM, skinMm(bottom)) + 0.5;
  const sides = [
    { face: "deck", zone: deck, foamY: above, outwards: -1 },
    { face: "bottom", zone: bottom, foamY: above + FOAM_MM, outwards: 1 },
  ] as const;
  return {
    widthMm,
    heightMm: above + FOAM_MM + below,
    frame: {
      origin: { x: 0, y: above },
      alongMmPerM: { x: 0, y: 0 },
      acrossMmPerM: { x: 0, y: -MM_PER_M * LAID_SKIN_TIMES },
    },
    notes: [],
    layers: [
      {
        id: "foam",
        items: [{ kind: "hatch", hatch: "foam", points: band(widthMm, above, above + FOAM_MM) }],
      },
      { id: "skin", items: sides.flatMap((side) => skinItems(plan, side, widthMm)) },
    ],
  };
}

type Zone = NonNullable<Plan["layup"]>["zones"][number];

function skinMm({ laminateThicknessM, fillThicknessM, glossThicknessM }: Zone): number {
  return (laminateThicknessM + fillThicknessM + glossThicknessM) * MM_PER_M * LAID_SKIN_TIMES;
}

interface Skin {
  readonly face: SkinFace;
  readonly zone: Zone;
  readonly foamY: number;
  readonly outwards: 1 | -1;
}

function skinItems(plan: Plan, { face, zone, foamY, outwards }: Skin, widthMm: number): readonly Item[] {
  const laid = laidCoats(plan, face);
  const coats = [
    { thicknessM: zone.laminateThicknessM, hatch: "cloth", isLaid: laid.laminate },
    { thicknessM: zone.fillThicknessM, hatch: "resin", isLaid: laid.fill },
    { thicknessM: zone.glossThicknessM, hatch: "resin", isLaid: laid.gloss },
  ] as const;
  const items: Item[] = [];
  let y = foamY;
  for (const { thicknessM, hatch, isLaid } of coats) {
    if (thicknessM <= 0) continue;
    const edge = y + outwards * thicknessM * MM_PER_M * LAID_SKIN_TIMES;
    if (isLaid) items.push({ kind: "hatch", hatch, points: band(widthMm, y, edge) });
    items.push(surface(widthMm, edge, isLaid ? "thin" : "hidden"));
    y = edge;
  }
  return [...items, surface(widthMm, foamY, "thick")];
}

function surface(widthMm: number, y: number, pen: "thin" | "hidden" | "thick"): Item {
  const tone = pen === "hidden" ? "soft" : "graphite";
  return { kind: "line", pen, tone, from: { x: 0, y }, to: { x: widthMm, y } };
}

function band(widthMm: number, from: number, to: number): readonly Point[] {
  return [
    { x: 0, y: from },
    { x: widthMm, y: from },
    { x: widthMm, y: to },
    { x: 0, y: to },
  ];
}
