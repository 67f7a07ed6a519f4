import type { Plan } from "@lapline/engine";
import type { Reader } from "../../language/Reader";
import { tell } from "../../language/tell";
import { setOutWords } from "../../words/setOutWords";
import { tailWord } from "../../words/tailWords";
import type { Block } from "../Block";
import { sayWhyMissing } from "../sayWhyMissing";
import { wrapText } from "../wrapText";
import { asSetLines } from "./asSetLines";
import { diagonalLines, markLines, roomLines, sidesLines, standLines, worthLines } from "./finTables";
import { plugLines } from "./plugLines";
import { boxLines, gateLines } from "./verifyLines";

/**
 * The marks as they are measured out, how each fin stands and what a millimetre is worth there, what the three rules for
 * the sides come to, the room around each box, the fins as set, the gate before the router, and the leash plug.
 */
export function finsBlock(plan: Plan, reader: Reader): Block {
  const t = tell(reader);
  const { finset } = plan;
  if (finset === null) {
    return {
      title: t`FINS`,
      lines: sayWhyMissing(plan, "finset", reader).flatMap((reason) => wrapText(reason, { indent: 2 })),
    };
  }
  const parts = [
    [...introLines(finset, reader), ...recommendLines(plan, reader)],
    markLines(finset, reader),
    standLines(finset, reader),
    worthLines(finset, reader),
    sidesLines(finset, reader),
    roomLines(finset, reader),
    diagonalLines(finset, reader),
    asSetLines(finset, reader),
    gateLines(finset, reader),
    boxLines(plan, finset, reader),
    plugLines(plan, finset, reader),
  ].filter((lines) => lines.length > 0);
  return {
    title: t`FINS, BOTTOM UP, NOSE AWAY: LEFT IS ON YOUR RIGHT HAND`,
    lines: parts.flatMap((lines, i) => (i === 0 ? lines : ["", ...lines])),
  };
}

function introLines(finset: NonNullable<Plan["finset"]>, reader: Reader): readonly string[] {
  const t = tell(reader);
  const grid = reader.units === "inch" ? t`inches, to 1/32` : t`mm, to 0.5`;
  return wrapText(
    `${setOutWords(finset, reader)} ${
      finset.line.crotchFromTailM === null
        ? t`Distances in ${grid}, from the ${tailWord(finset.line)} by tape along the bottom.`
        : t`Distances in ${grid}, from the ${tailWord(finset.line)} by tape along the bottom, and from the crotch where that is said.`
    }`,
    { indent: 2 },
  );
}

/** The rule for the sides that suits the board, and where its reason stands. */
function recommendLines(plan: Plan, reader: Reader): readonly string[] {
  const t = tell(reader);
  const finding = plan.findings.find(({ code }) => code === "finset.sides-recommended");
  if (finding === undefined) return [];
  const rule = plan.finset?.recommendedSides ?? "";
  return wrapText(t`Recommended for the sides: ${rule}. Why stands among the findings, at ${finding.path}.`, {
    indent: 2,
    hanging: 4,
  });
}
