import type { Plan, Side } from "@lapline/engine";
import type { Item } from "../drawing/Drawing";
import { estimateTextWidthMm } from "../drawing/estimateTextWidthMm";
import type { Reader } from "../language/Reader";
import { formatBareLength } from "./formatBareLength";
import { placeOnSheet, uOf, vOf } from "./Lay";
import type { PlanLayout } from "./planLayout";
import { sideReadings } from "./sideReadings";
import { spreadLabels } from "./spreadLabels";

type Shape = NonNullable<Plan["shape"]>;
type Reading = Shape["readings"][number];

interface ReadingLabel {
  readonly reading: Reading;
  readonly uMm: number;
  readonly text: string;
}

/** The half-widths as they were read, each on the side where the tape was held; one that does not fit stands on tape. */
export function readingItems(
  shape: Shape,
  { layout, reader }: { layout: PlanLayout; reader: Reader },
): readonly Item[] {
  return (["left", "right"] as const).flatMap((side) => {
    const labels = sideReadings(shape, side)
      .map(
        (reading): ReadingLabel => ({
          reading,
          uMm: uOf(layout.lay, reading.fromTailM),
          text: formatBareLength(reading.readM, reader),
        }),
      )
      .sort((a, b) => a.uMm - b.uMm);
    return sideItems(shape, labels, { layout, side });
  });
}

function sideItems(
  shape: Shape,
  labels: readonly ReadingLabel[],
  { layout, side }: { layout: PlanLayout; side: Side },
): readonly Item[] {
  const { lay, textMm, turned } = layout;
  const outward = vOf(lay, side === "left" ? 1 : -1) > lay.vStringerMm ? 1 : -1;
  const rowMm = outward > 0 ? layout.highRowMm : layout.lowRowMm;
  const widest = Math.max(...labels.map((label) => estimateTextWidthMm(label.text, textMm)), 0);
  const places = spreadLabels(
    labels.map((label) => label.uMm),
    {
      gap: lay.stands || turned ? textMm * 1.15 : widest + 1.5,
      from: lay.uTailMm - textMm,
      to: uOf(lay, shape.lengthM) + textMm,
    },
  );
  return labels.flatMap((label, i) => {
    const uLabel = places[i] ?? label.uMm;
    const vEdge = vOf(lay, (side === "left" ? 1 : -1) * label.reading.readM);
    const knee = rowMm - outward * 2.5;
    return [
      {
        kind: "line",
        pen: "thin",
        from: placeOnSheet(lay, label.uMm, vEdge),
        to: placeOnSheet(lay, label.uMm, knee),
      },
      {
        kind: "line",
        pen: "thin",
        from: placeOnSheet(lay, label.uMm, knee),
        to: placeOnSheet(lay, uLabel, rowMm),
      },
      ...figureItems(label, { layout, uLabel, rowMm, outward }),
    ] satisfies Item[];
  });
}

function figureItems(
  label: ReadingLabel,
  place: { layout: PlanLayout; uLabel: number; rowMm: number; outward: number },
): Item[] {
  const { layout, uLabel, rowMm, outward } = place;
  const { lay, textMm, turned } = layout;
  const wide = estimateTextWidthMm(label.text, textMm);
  const along = lay.stands || turned ? textMm * 0.36 : 0;
  const lyingDown = outward > 0 ? textMm * 0.95 : -0.8;
  const vText = rowMm + (lay.stands || turned ? outward * 0.8 : lyingDown);
  const tape = label.reading.suspect ? [tapeUnder({ ...place, wide })] : [];
  return [
    ...tape,
    {
      kind: "text",
      at: placeOnSheet(lay, uLabel + (turned ? -along : -along), vText),
      text: label.text,
      sizeMm: textMm,
      anchor: lay.stands || turned ? anchorOutward(outward, turned) : "middle",
      role: "figure",
      ...(turned ? { turnRad: -Math.PI / 2 } : {}),
    },
  ];
}

/** Turned text runs up the sheet: on the low side it starts at the board, on the high side it ends there. */
function anchorOutward(outward: number, turned: boolean): "start" | "end" {
  if (turned) return outward > 0 ? "end" : "start";
  return outward > 0 ? "start" : "end";
}

/** A piece of masking tape beneath a figure. */
function tapeUnder(place: {
  layout: PlanLayout;
  uLabel: number;
  rowMm: number;
  outward: number;
  wide: number;
}): Item {
  const { layout, uLabel, rowMm, outward, wide } = place;
  const { lay, textMm, turned } = layout;
  const alongMm = lay.stands || turned ? textMm * 1.15 : wide + 2;
  const acrossMm = lay.stands || turned ? wide + 2 : textMm * 1.2;
  const corner = (u: number, v: number) => placeOnSheet(lay, uLabel + u, rowMm + outward * v);
  return {
    kind: "hatch",
    hatch: "tape",
    points: [
      corner(-alongMm / 2, 0),
      corner(alongMm / 2, 0),
      corner(alongMm / 2, acrossMm),
      corner(-alongMm / 2, acrossMm),
    ],
  };
}
