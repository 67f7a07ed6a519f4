import { area, formatQuantity, length, type Plan, type Units, volume } from "@lapline/engine";
import { readingName } from "../words/readingName";
import { symmetrySentences } from "../words/symmetrySentences";
import type { Block } from "./Block";
import { formatTable } from "./formatTable";
import { sayWhyMissing } from "./sayWhyMissing";
import { wrapText } from "./wrapText";

type Shape = NonNullable<Plan["shape"]>;

/** What was measured: the board's main figures, how true it is, which readings to take again. */
export function measureBlock(plan: Plan, units: Units): Block {
  const { shape } = plan;
  const lines =
    shape === null
      ? sayWhyMissing(plan, "shape", units).flatMap((reason) => wrapText(reason, { indent: 2 }))
      : [...figureLines(shape, units), "", ...trueLines(plan, shape, units)];
  return { title: "MEASURE", lines };
}

function figureLines(shape: Shape, units: Units): readonly string[] {
  const at = (valueM: number): string => formatQuantity(length(valueM), units);
  const rows: ReadonlyArray<readonly [string, string, string]> = [
    ["length", at(shape.lengthTapeM), `by tape; ${at(shape.lengthM)} straight`],
    ["widest", at(shape.widthMaxM), `${at(shape.widthMaxFromTailM)} from the tail`],
    ["thickest", at(shape.thicknessMaxM), `${at(shape.thicknessMaxFromTailM)} from the tail`],
    ["nose rocker", at(shape.noseRockerM), ""],
    ["tail rocker", at(shape.tailRockerM), ""],
    [
      "volume",
      formatQuantity(volume(shape.volumeM3), units),
      `${formatQuantity(volume(shape.volumeLowM3), units)} to ${formatQuantity(volume(shape.volumeHighM3), units)}`,
    ],
    ["plan area", formatQuantity(area(shape.planAreaM2), units), ""],
    ["deck skin", formatQuantity(area(shape.deckAreaM2), units), ""],
    ["bottom skin", formatQuantity(area(shape.bottomAreaM2), units), ""],
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

function trueLines(plan: Plan, shape: Shape, units: Units): readonly string[] {
  const suspects = shape.readings.filter((reading) => reading.suspect);
  const help = shape.wouldHelp.slice(0, 3);
  const show = (valueM: number): string => formatQuantity(length(valueM), units);
  return [
    ...symmetrySentences(plan, units),
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
