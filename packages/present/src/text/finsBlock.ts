import { angle, formatQuantity, length, type Plan, type Quantity, type Units } from "@lapline/engine";
import { formatBareLength } from "../board/formatBareLength";
import { setOutWords } from "../words/setOutWords";
import type { Block } from "./Block";
import { type Column, formatTable } from "./formatTable";
import { sayWhyMissing } from "./sayWhyMissing";
import { wrapText } from "./wrapText";

type Finset = NonNullable<Plan["finset"]>;
type Mark = Finset["marks"][number];

const NAME: Column = { head: "fin", align: "left" };
const figure = (head: string): Column => ({ head, align: "right" });

/** The marks as they are measured out, then how each fin stands, then what to check before a hole is cut. */
export function finsBlock(plan: Plan, units: Units): Block {
  const { finset } = plan;
  if (finset === null) {
    return {
      title: "FINS",
      lines: sayWhyMissing(plan, "finset", units).flatMap((reason) => wrapText(reason, { indent: 2 })),
    };
  }
  return {
    title: "FINS, BOTTOM UP, NOSE AWAY: LEFT IS ON YOUR RIGHT HAND",
    lines: [
      ...wrapText(
        `${setOutWords(finset)} Distances in ${units === "inch" ? "inches" : "mm"}, from the tail by tape along the bottom.`,
        { indent: 2 },
      ),
      "",
      ...markTable(finset.marks, units),
      "",
      ...standTable(finset.marks, units),
      "",
      ...checkLines(finset, units),
    ],
  };
}

function markTable(marks: readonly Mark[], units: Units): readonly string[] {
  const bare = (valueM: number): string => formatBareLength(valueM, units);
  return formatTable(
    [
      NAME,
      figure("trailing: from tail"),
      figure("from line"),
      figure("from rail"),
      figure("leading: from tail"),
      figure("from line"),
    ],
    marks.map((mark) => [
      mark.id,
      bare(mark.trailing.fromTailTapeM),
      bare(mark.trailing.fromCentrelineM),
      bare(mark.trailing.fromRailM),
      bare(mark.leading.fromTailTapeM),
      bare(mark.leading.fromCentrelineM),
    ]),
  );
}

function standTable(marks: readonly Mark[], units: Units): readonly string[] {
  const show = (quantity: Quantity): string => formatQuantity(quantity, units);
  return formatTable(
    [
      NAME,
      figure("toe over base"),
      figure("toe"),
      figure("string beside nose"),
      figure("or meets centre beyond nose"),
      figure("cant"),
      figure("foam left"),
    ],
    marks.map((mark) => [
      mark.id,
      formatBareLength(mark.toeOverBaseM, units, "fine"),
      show(angle(mark.toeRad)),
      mark.side === "centre" ? "-" : formatBareLength(mark.aimBesideNoseM, units),
      mark.aimBeyondNoseM === null ? "-" : formatBareLength(mark.aimBeyondNoseM, units),
      show(angle(mark.cantRad)),
      mark.foamUnderM === null ? "-" : formatBareLength(mark.foamUnderM, units),
    ]),
  );
}

/** What to measure before a hole is cut: the diagonals of each pair, and the leash plug's place. */
function checkLines(finset: Finset, units: Units): readonly string[] {
  const show = (valueM: number): string => formatQuantity(length(valueM), units);
  const diagonals = finset.pairs.flatMap((pair) =>
    pair.diagonals.map((diagonal) => [
      `${pair.id}, ${diagonal.id.replace("-", " to ")} mark`,
      show(diagonal.leftTapeM),
      show(diagonal.rightTapeM),
    ]),
  );
  const plug = finset.leashPlug;
  return [
    ...(diagonals.length > 0
      ? formatTable(
          [{ head: "check by taut tape", align: "left" }, figure("left"), figure("right")],
          diagonals,
        )
      : []),
    ...(plug === null
      ? []
      : wrapText(
          `Leash plug, on the deck, ${plug.side}: ${show(plug.fromTailTapeM)} from the tail, ${show(plug.fromCentrelineM)} from the line.`,
          { indent: 2, hanging: 4 },
        )),
  ];
}
