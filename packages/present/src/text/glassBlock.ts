import { area, formatQuantity, length, mass, type Plan, type Units } from "@lapline/engine";
import { skinGroups } from "../words/skinGroups";
import type { Block } from "./Block";
import { type Column, formatTable } from "./formatTable";
import { sayWhyMissing } from "./sayWhyMissing";
import { wrapText } from "./wrapText";

type Layup = NonNullable<Plan["layup"]>;

const words = (head: string): Column => ({ head, align: "left" });
const figure = (head: string): Column => ({ head, align: "right" });

/** Cloth pieces, resin by coat, and how thick the skin comes out. */
export function glassBlock(plan: Plan, units: Units): Block {
  const { layup } = plan;
  const lines =
    layup === null
      ? sayWhyMissing(plan, "layup", units).flatMap((reason) => wrapText(reason, { indent: 2 }))
      : [...pieceTable(layup, units), "", ...coatTable(layup, units), "", ...zoneTable(layup, units)];
  return { title: "GLASS", lines };
}

function pieceTable(layup: Layup, units: Units): readonly string[] {
  return formatTable(
    [
      words("piece"),
      words("cloth"),
      figure("length"),
      figure("width"),
      figure("area"),
      figure("cloth weighs"),
      figure("holds resin"),
    ],
    layup.pieces.map((piece) => [
      piece.id,
      piece.cloth,
      formatQuantity(length(piece.lengthM, "coarse"), units),
      formatQuantity(length(piece.widthM, "coarse"), units),
      formatQuantity(area(piece.areaM2), units),
      formatQuantity(mass(piece.clothMassKg), units),
      formatQuantity(mass(piece.resinMassKg), units),
    ]),
  );
}

function coatTable(layup: Layup, units: Units): readonly string[] {
  const show = (valueKg: number): string => formatQuantity(mass(valueKg), units);
  return formatTable(
    [words("coat"), words("resin"), figure("mix"), figure("from"), figure("to"), figure("stays on")],
    layup.coats.map((coat) => [
      coat.id,
      coat.resin,
      show(coat.resinMassKg),
      show(coat.resinMassLowKg),
      show(coat.resinMassHighKg),
      show(coat.keptMassKg),
    ]),
  );
}

/** Zones that come out alike share a line. */
function zoneTable(layup: Layup, units: Units): readonly string[] {
  const show = (valueM: number): string => (valueM === 0 ? "-" : formatQuantity(length(valueM), units));
  return formatTable(
    [words("skin at"), figure("glass"), figure("fill"), figure("gloss")],
    skinGroups(layup.zones).map(({ names, zone }) => [
      names.join(", "),
      show(zone.laminateThicknessM),
      show(zone.fillThicknessM),
      show(zone.glossThicknessM),
    ]),
  );
}
