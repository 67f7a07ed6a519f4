import { area, arealMass, count, fraction, length, mass, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { tellText } from "../language/tellText";
import {
  comparisonLimits,
  cuttingSentence,
  notchSentences,
  scheduleLayers,
  scheduleName,
} from "../words/layupWords";
import { pieceName } from "../words/pieceName";
import { skinGroups } from "../words/skinGroups";
import type { Block } from "./Block";
import { type Column, formatTable } from "./formatTable";
import { sayWhyMissing } from "./sayWhyMissing";
import { wrapText } from "./wrapText";

type Layup = NonNullable<Plan["layup"]>;

const words = (head: string): Column => ({ head, align: "left" });
const figure = (head: string): Column => ({ head, align: "right" });

/** Cloth pieces and how they are cut, resin by coat and its terms, the skin by zone, and schedules side by side. */
export function glassBlock(plan: Plan, reader: Reader): Block {
  const t = tell(reader);
  const { layup } = plan;
  if (layup === null) {
    const reasons = sayWhyMissing(plan, "layup", reader);
    return { title: t`GLASS`, lines: reasons.flatMap((reason) => wrapText(reason, { indent: 2 })) };
  }
  const parts = [
    [...pieceTable(layup, reader), ...cuttingLines(layup, reader)],
    [...coatTable(layup, reader), ...termLines(layup, reader)],
    zoneTable(layup, reader),
    comparisonTable(layup, reader),
  ].filter((part) => part.length > 0);
  return { title: t`GLASS`, lines: parts.flatMap((part, i) => (i === 0 ? part : ["", ...part])) };
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
      pieceName(piece.id, reader),
      piece.cloth,
      showQuantity(length(piece.lengthM, "coarse"), reader),
      showQuantity(length(piece.widthM, "coarse"), reader),
      showQuantity(area(piece.areaM2), reader),
      showQuantity(mass(piece.clothMassKg), reader),
      showQuantity(mass(piece.resinMassKg), reader),
    ]),
  );
}

function cuttingLines(layup: Layup, reader: Reader): readonly string[] {
  return [cuttingSentence(layup, reader), ...notchSentences(layup, reader)].flatMap((line) =>
    wrapText(line, { indent: 2, hanging: 4 }),
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

/** What each coat's mix is made of; terms of nought are left out. */
function termLines({ coats }: Layup, reader: Reader): readonly string[] {
  return coats.flatMap((coat) => {
    const terms = coat.terms
      .filter(({ massKg }) => massKg > 0)
      .map(({ name, massKg }) => `${showQuantity(mass(massKg), reader)} ${tellText(name, reader)}`);
    return wrapText(`${tellText(coat.id, reader)}: ${terms.join("; ")}`, { indent: 2, hanging: 4 });
  });
}

/** Zones that come out alike share a line. */
function zoneTable(layup: Layup, reader: Reader): readonly string[] {
  const t = tell(reader);
  const show = (valueM: number): string => (valueM === 0 ? "-" : showQuantity(length(valueM), reader));
  return formatTable(
    [
      words(t`skin at`),
      figure(t`glass`),
      figure(t`fill`),
      figure(t`gloss`),
      figure(t`fibre`),
      figure(t`weighs`),
    ],
    skinGroups(layup.zones, reader).map(({ names, zone }) => [
      names.join(", "),
      show(zone.laminateThicknessM),
      show(zone.fillThicknessM),
      show(zone.glossThicknessM),
      zone.fibreVolumeFraction === 0 ? "-" : showQuantity(fraction(zone.fibreVolumeFraction), reader),
      showQuantity(arealMass(zone.skinArealMassKgM2), reader),
    ]),
  );
}

function comparisonTable({ compared }: Layup, reader: Reader): readonly string[] {
  if (compared.length < 2) return [];
  const t = tell(reader);
  const show = (ratio: number | null): string => (ratio === null ? "-" : showQuantity(count(ratio), reader));
  const table = formatTable(
    [
      words(t`schedule, bottom / deck`),
      figure(t`skin`),
      figure(t`stiff`),
      figure(t`deck waves`),
      figure(t`bottom waves`),
    ],
    compared.map((schedule) => [
      `${scheduleName(schedule.id, reader)}: ${scheduleLayers(schedule)}`,
      showQuantity(mass(schedule.skinMassKg), reader),
      show(schedule.stiffnessRatio),
      show(schedule.deckWrinklingRatio),
      show(schedule.bottomWrinklingRatio),
    ]),
  );
  return [...table, ...wrapText(comparisonLimits(reader), { indent: 2 })];
}
