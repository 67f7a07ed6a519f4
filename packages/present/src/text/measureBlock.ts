import { area, count, length, type Plan, type Quantity, volume } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { readingName } from "../words/readingName";
import { symmetrySentences } from "../words/symmetrySentences";
import { widthWords } from "../words/widthWords";
import type { Block } from "./Block";
import { formatTable } from "./formatTable";
import { sayWhyMissing } from "./sayWhyMissing";
import { wrapText } from "./wrapText";

type Shape = NonNullable<Plan["shape"]>;
type Row = readonly [string, string, string];

/** What was measured: the board's main figures, how true it is, which readings to take again. */
export function measureBlock(plan: Plan, reader: Reader): Block {
  const t = tell(reader);
  const { shape } = plan;
  const lines =
    shape === null
      ? sayWhyMissing(plan, "shape", reader).flatMap((reason) => wrapText(reason, { indent: 2 }))
      : [...figureLines(plan, shape, reader), "", ...trueLines(plan, shape, reader)];
  return { title: t`MEASURE`, lines };
}

function figureLines({ byWeight }: Plan, shape: Shape, reader: Reader): readonly string[] {
  const t = tell(reader);
  const show = (quantity: Quantity): string => showQuantity(quantity, reader);
  const at = (valueM: number): string => showQuantity(length(valueM), reader);
  const rows: readonly Row[] = [
    [t`length`, at(shape.lengthTapeM), t`by tape; ${at(shape.lengthM)} straight`],
    [t`widest`, at(shape.widthMaxM), t`${at(shape.widthMaxFromTailM)} from the tail`],
    ...shape.widths.map((width): Row => {
      const { name, where } = widthWords(width, reader);
      return [name, at(width.widthM), where];
    }),
    [t`thickest`, at(shape.thicknessMaxM), t`${at(shape.thicknessMaxFromTailM)} from the tail`],
    ...(shape.notch === null ? [] : [notchRow(shape.notch, reader)]),
    [t`nose rocker`, at(shape.noseRockerM), ""],
    [t`tail rocker`, at(shape.tailRockerM), ""],
    [
      t`volume`,
      show(volume(shape.volumeM3)),
      t`${show(volume(shape.volumeLowM3))} to ${show(volume(shape.volumeHighM3))} by the shape`,
    ],
    ...(byWeight === null ? [] : [weightRow(byWeight, reader)]),
    [t`plan area`, show(area(shape.planAreaM2)), ""],
    [t`deck skin`, show(area(shape.deckAreaM2)), ""],
    [t`bottom skin`, show(area(shape.bottomAreaM2)), ""],
  ];
  const [, ...body] = formatTable(
    [
      { head: "", align: "left" },
      { head: "", align: "right" },
      { head: "", align: "left" },
    ],
    rows,
  );
  return body;
}

/** A swallow's notch: what there is between the distances from the tips and those from the crotch. */
function notchRow({ widthM, depthM }: NonNullable<Shape["notch"]>, reader: Reader): Row {
  const t = tell(reader);
  return [t`notch`, t`${length(depthM)}`, t`from the tips to the crotch; ${length(widthM)} between the tips`];
}

/** The volume that the scale gives, beside the one by the shape, and what deck would make them agree. */
function weightRow(byWeight: NonNullable<Plan["byWeight"]>, reader: Reader): Row {
  const t = tell(reader);
  const show = (quantity: Quantity): string => showQuantity(quantity, reader);
  const { volumeM3, volumeLowM3, volumeHighM3, deckFullness } = byWeight;
  const agree =
    deckFullness === null ? t`no deck agrees` : t`deck fullness ${show(count(deckFullness))} agrees`;
  return [
    t`by the scale`,
    show(volume(volumeM3)),
    t`${show(volume(volumeLowM3))} to ${show(volume(volumeHighM3))}; ${agree}`,
  ];
}

function trueLines(plan: Plan, shape: Shape, reader: Reader): readonly string[] {
  const t = tell(reader);
  const suspects = shape.readings.filter((reading) => reading.suspect);
  const help = shape.wouldHelp.slice(0, 3);
  const show = (valueM: number): string => showQuantity(length(valueM), reader);
  return [
    ...symmetrySentences(plan, reader),
    ...suspects.map(
      (reading) =>
        t`Re-measure ${readingName(reading.path, reader)}: ${show(reading.wouldFitM)} would fit, ${show(reading.readM)} was read.`,
    ),
    ...(help.length > 0
      ? [
          t`One more station would help most at ${help.map((each) => show(each.fromTailM)).join(t`, or `)} from the tail.`,
        ]
      : []),
  ].flatMap((text) => wrapText(text, { indent: 2, hanging: 4 }));
}
