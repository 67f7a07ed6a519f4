import { formatPhrase, type Plan, type Units } from "@lapline/engine";
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
export function finsBlock(plan: Plan, units: Units): Block {
  const { finset } = plan;
  if (finset === null) {
    return {
      title: "FINS",
      lines: sayWhyMissing(plan, "finset", units).flatMap((reason) => wrapText(reason, { indent: 2 })),
    };
  }
  const parts = [
    [...introLines(finset, units), ...recommendLines(plan, units)],
    markLines(finset, units),
    standLines(finset, units),
    worthLines(finset, units),
    sidesLines(finset, units),
    roomLines(finset, units),
    diagonalLines(finset, units),
    asSetLines(finset, units),
    gateLines(finset, units),
    boxLines(plan, finset, units),
    plugLines(plan, finset, units),
  ].filter((lines) => lines.length > 0);
  return {
    title: "FINS, BOTTOM UP, NOSE AWAY: LEFT IS ON YOUR RIGHT HAND",
    lines: parts.flatMap((lines, i) => (i === 0 ? lines : ["", ...lines])),
  };
}

function introLines(finset: NonNullable<Plan["finset"]>, units: Units): readonly string[] {
  return wrapText(
    `${setOutWords(finset, units)} Distances in ${units === "inch" ? "inches, to 1/32" : "mm, to 0.5"}, from the ${tailWord(finset.line)} by tape along the bottom${finset.line.crotchFromTailM === null ? "" : ", and from the crotch where that is said"}.`,
    { indent: 2 },
  );
}

/** The rule for the sides that suits the board, with its reason. */
function recommendLines(plan: Plan, units: Units): readonly string[] {
  const finding = plan.findings.find(({ code }) => code === "finset.sides-recommended");
  if (finding === undefined) return [];
  const rule = plan.finset?.recommendedSides ?? "";
  return wrapText(`Recommended for the sides: ${rule}. Because: ${formatPhrase(finding.says, units)}.`, {
    indent: 2,
    hanging: 4,
  });
}
