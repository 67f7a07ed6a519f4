import { area, count, length, type Plan, type Quantity, volume } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
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
  const { shape } = plan;
  const lines =
    shape === null
      ? sayWhyMissing(plan, "shape", reader).flatMap((reason) => wrapText(reason, { indent: 2 }))
      : [...figureLines(plan, shape, reader), "", ...trueLines(plan, shape, reader)];
  return { title: "MEASURE", lines };
}

function figureLines({ byWeight }: Plan, shape: Shape, reader: Reader): readonly string[] {
  const show = (quantity: Quantity): string => showQuantity(quantity, reader);
  const at = (valueM: number): string => showQuantity(length(valueM), reader);
  const rows: readonly Row[] = [
    ["length", at(shape.lengthTapeM), `by tape; ${at(shape.lengthM)} straight`],
    ["widest", at(shape.widthMaxM), `${at(shape.widthMaxFromTailM)} from the tail`],
    ...shape.widths.map((width): Row => {
      const { name, where } = widthWords(width, reader);
      return [name, at(width.widthM), where];
    }),
    ["thickest", at(shape.thicknessMaxM), `${at(shape.thicknessMaxFromTailM)} from the tail`],
    ...(shape.notch === null ? [] : [notchRow(shape.notch, at)]),
    ["nose rocker", at(shape.noseRockerM), ""],
    ["tail rocker", at(shape.tailRockerM), ""],
    [
      "volume",
      show(volume(shape.volumeM3)),
      `${show(volume(shape.volumeLowM3))} to ${show(volume(shape.volumeHighM3))} by the shape`,
    ],
    ...(byWeight === null ? [] : [weightRow(byWeight, show)]),
    ["plan area", show(area(shape.planAreaM2)), ""],
    ["deck skin", show(area(shape.deckAreaM2)), ""],
    ["bottom skin", show(area(shape.bottomAreaM2)), ""],
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
function notchRow({ widthM, depthM }: NonNullable<Shape["notch"]>, at: (valueM: number) => string): Row {
  return ["notch", at(depthM), `from the tips to the crotch; ${at(widthM)} between the tips`];
}

/** The volume that the scale gives, beside the one by the shape, and what deck would make them agree. */
function weightRow(byWeight: NonNullable<Plan["byWeight"]>, show: (quantity: Quantity) => string): Row {
  const { volumeM3, volumeLowM3, volumeHighM3, deckFullness } = byWeight;
  const agree =
    deckFullness === null ? "no deck agrees" : `deck fullness ${show(count(deckFullness))} agrees`;
  return [
    "by the scale",
    show(volume(volumeM3)),
    `${show(volume(volumeLowM3))} to ${show(volume(volumeHighM3))}; ${agree}`,
  ];
}

function trueLines(plan: Plan, shape: Shape, reader: Reader): readonly string[] {
  const suspects = shape.readings.filter((reading) => reading.suspect);
  const help = shape.wouldHelp.slice(0, 3);
  const show = (valueM: number): string => showQuantity(length(valueM), reader);
  return [
    ...symmetrySentences(plan, reader),
    ...suspects.map(
      (reading) =>
        `Re-measure ${readingName(reading.path)}: ${show(reading.wouldFitM)} would fit, ${show(reading.readM)} was read.`,
    ),
    ...(help.length > 0
      ? [
          `One more station would help most at ${help.map((each) => show(each.fromTailM)).join(", or ")} from the tail.`,
        ]
      : []),
  ].flatMap((text) => wrapText(text, { indent: 2, hanging: 4 }));
}
