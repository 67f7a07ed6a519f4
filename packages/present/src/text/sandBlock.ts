import { duration, fraction, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { repairSentences, repairTitle } from "../words/repairWords";
import { filmFigure, riskWord, sandRows, sandRules, worstSentence, zoneName } from "../words/sandWords";
import type { Block } from "./Block";
import { type Column, formatTable } from "./formatTable";
import { sayWhyMissing } from "./sayWhyMissing";
import { wrapText } from "./wrapText";

type Sanding = NonNullable<Plan["sanding"]>;

const words = (head: string): Column => ({ head, align: "left" });
const figure = (head: string): Column => ({ head, align: "right" });

/** The film as a budget, first where it goes through first, and the ladder of papers. */
export function sandBlock(plan: Plan, reader: Reader): Block {
  const { sanding } = plan;
  const title = tell(reader)`SAND`;
  if (sanding === null) {
    const lines = sayWhyMissing(plan, "sanding", reader).flatMap((reason) =>
      wrapText(reason, { indent: 2, hanging: 4 }),
    );
    return { title, lines };
  }
  const worst = worstSentence(sanding, reader);
  const sentences = [...(worst === null ? [] : [worst]), ...sandRules(reader)];
  return {
    title,
    lines: [
      ...zoneTable(sanding, reader),
      "",
      ...gritTable(sanding, reader),
      "",
      ...sentences.flatMap((sentence) => wrapText(sentence, { indent: 2, hanging: 4 })),
      ...(plan.repairs ?? []).flatMap((repair) => [
        "",
        ...wrapText(repairTitle(repair, reader), { indent: 2, hanging: 4 }),
        ...repairSentences(repair, reader).flatMap((line) => wrapText(line, { indent: 4, hanging: 6 })),
      ]),
    ],
  };
}

function zoneTable({ zones }: Sanding, reader: Reader): readonly string[] {
  const t = tell(reader);
  const show = (valueM: number): string => filmFigure(valueM, reader);
  return formatTable(
    [
      words(t`µm of film`),
      figure(t`film`),
      figure(t`taken`),
      figure(t`remains`),
      figure(t`from`),
      figure(t`to`),
      figure(t`gone in`),
      words(""),
    ],
    sandRows(zones).map((zone) => [
      zoneName(zone.id, reader),
      show(zone.filmM),
      show(zone.takenM),
      show(zone.remainingM),
      show(zone.remainingLowM),
      show(zone.remainingHighM),
      showQuantity(fraction(zone.throughShare), reader),
      riskWord(zone.risk, reader),
    ]),
  );
}

function gritTable({ grits }: Sanding, reader: Reader): readonly string[] {
  const t = tell(reader);
  const show = (valueM: number): string => filmFigure(valueM, reader);
  return formatTable(
    [
      words(t`paper`),
      words(t`US`),
      figure(t`grain, µm`),
      figure(t`takes, µm`),
      figure(t`leaves, µm`),
      figure(t`time`),
      figure(t`rails`),
      words(t`where`),
      figure(t`discs`),
      figure(t`sheets`),
    ],
    grits.map((grit) => [
      grit.grit,
      grit.us ?? "-",
      show(grit.grainM),
      show(grit.removesM),
      show(grit.scratchM),
      showQuantity(duration(grit.handsOnS), reader),
      grit.railsS > 0 ? showQuantity(duration(grit.railsS), reader) : "-",
      grit.wet ? t`wet, all over` : grit.onEdges ? t`dry, rails too` : t`dry, flats only`,
      String(grit.discs),
      String(grit.sheets),
    ]),
  );
}
