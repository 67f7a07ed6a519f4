import { area, length, mass, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { tellText } from "../language/tellText";
import { skinGroups } from "../words/skinGroups";
import type { Block } from "./Block";
import { type Column, formatTable } from "./formatTable";
import { sayWhyMissing } from "./sayWhyMissing";
import { wrapText } from "./wrapText";

type Layup = NonNullable<Plan["layup"]>;

const words = (head: string): Column => ({ head, align: "left" });
const figure = (head: string): Column => ({ head, align: "right" });

/** Cloth pieces, resin by coat, and how thick the skin comes out. */
export function glassBlock(plan: Plan, reader: Reader): Block {
  const t = tell(reader);
  const { layup } = plan;
  const lines =
    layup === null
      ? sayWhyMissing(plan, "layup", reader).flatMap((reason) => wrapText(reason, { indent: 2 }))
      : [...pieceTable(layup, reader), "", ...coatTable(layup, reader), "", ...zoneTable(layup, reader)];
  return { title: t`GLASS`, lines };
}

function pieceTable(layup: Layup, reader: Reader): readonly string[] {
  const t = tell(reader);
  return formatTable(
    [
      words(t`piece`),
      words(t`cloth`),
      figure(t`length`),
      figure(t`width`),
      figure(t`area`),
      figure(t`cloth weighs`),
      figure(t`holds resin`),
    ],
    layup.pieces.map((piece) => [
      tellText(piece.id, reader),
      piece.cloth,
      showQuantity(length(piece.lengthM, "coarse"), reader),
      showQuantity(length(piece.widthM, "coarse"), reader),
      showQuantity(area(piece.areaM2), reader),
      showQuantity(mass(piece.clothMassKg), reader),
      showQuantity(mass(piece.resinMassKg), reader),
    ]),
  );
}

function coatTable(layup: Layup, reader: Reader): readonly string[] {
  const t = tell(reader);
  const show = (valueKg: number): string => showQuantity(mass(valueKg), reader);
  return formatTable(
    [words(t`coat`), words(t`resin`), figure(t`mix`), figure(t`from`), figure(t`to`), figure(t`stays on`)],
    layup.coats.map((coat) => [
      tellText(coat.id, reader),
      coat.resin,
      show(coat.resinMassKg),
      show(coat.resinMassLowKg),
      show(coat.resinMassHighKg),
      show(coat.keptMassKg),
    ]),
  );
}

/** Zones that come out alike share a line. */
function zoneTable(layup: Layup, reader: Reader): readonly string[] {
  const t = tell(reader);
  const show = (valueM: number): string => (valueM === 0 ? "-" : showQuantity(length(valueM), reader));
  return formatTable(
    [words(t`skin at`), figure(t`glass`), figure(t`fill`), figure(t`gloss`)],
    skinGroups(layup.zones).map(({ names, zone }) => [
      names.map((name) => tellText(name, reader)).join(", "),
      show(zone.laminateThicknessM),
      show(zone.fillThicknessM),
      show(zone.glossThicknessM),
    ]),
  );
}
