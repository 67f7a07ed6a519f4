import { angle, length, type Plan } from "@lapline/engine";
import { formatBareLength } from "../../board/formatBareLength";
import type { Reader } from "../../language/Reader";
import { showQuantity } from "../../language/showQuantity";
import { formatBareTapeLength, formatTapeLength } from "../../words/formatTapeLength";
import { tailWord } from "../../words/tailWords";
import { worthWords } from "../../words/worthWords";
import { type Column, formatTable } from "../formatTable";

type Finset = NonNullable<Plan["finset"]>;

export const words = (head: string): Column => ({ head, align: "left" });
export const figure = (head: string): Column => ({ head, align: "right" });

/** Both ends of each base, by tape from the tail, from the line and from the rail; of a swallow tail from its crotch too. */
export function markLines({ marks, line }: Finset, reader: Reader): readonly string[] {
  const bare = (valueM: number): string => formatBareTapeLength(valueM, reader);
  const hasCrotch = line.crotchFromTailM !== null;
  const crotch = (point: (typeof marks)[number]["trailing"]): readonly string[] =>
    hasCrotch ? [bare(point.fromCrotchTapeM ?? 0)] : [];
  const crotchHead = hasCrotch ? [figure("from crotch")] : [];
  return formatTable(
    [
      words("fin"),
      figure(`trailing: from ${tailWord(line)}`),
      ...crotchHead,
      figure("from line"),
      figure("from rail"),
      figure(`leading: from ${tailWord(line)}`),
      ...crotchHead,
      figure("from line"),
    ],
    marks.map((mark) => [
      mark.id,
      bare(mark.trailing.fromTailTapeM),
      ...crotch(mark.trailing),
      bare(mark.trailing.fromCentrelineM),
      bare(mark.trailing.fromRailM),
      bare(mark.leading.fromTailTapeM),
      ...crotch(mark.leading),
      bare(mark.leading.fromCentrelineM),
    ]),
  );
}

/** Toe in every form, and cant. */
export function standLines({ marks }: Finset, reader: Reader): readonly string[] {
  const show = (valueRad: number): string => showQuantity(angle(valueRad), reader);
  return formatTable(
    [
      words("fin"),
      figure("base"),
      figure("toe over base"),
      figure("toe"),
      figure("string beside nose"),
      figure("or meets line beyond nose"),
      figure("cant"),
      figure("true cant"),
    ],
    marks.map((mark) => [
      mark.id,
      formatBareTapeLength(mark.baseM, reader),
      mark.side === "centre" ? "-" : formatBareLength(mark.toeOverBaseM, reader, "fine"),
      show(mark.toeRad),
      mark.side === "centre" ? "-" : formatBareTapeLength(mark.aimBesideNoseM, reader),
      mark.aimBeyondNoseM === null ? "-" : formatBareLength(mark.aimBeyondNoseM, reader),
      show(mark.cantRad),
      show(mark.trueCantRad),
    ]),
  );
}

/** What a millimetre at each point is worth in toe; one line for each fin, since both sides are alike in it. */
export function worthLines({ marks }: Finset, reader: Reader): readonly string[] {
  const toed = marks.filter(({ side }) => side === "left");
  const [first] = toed;
  if (first === undefined) return [];
  return formatTable(
    [words("toe turned by"), ...toed.map(({ fin }) => figure(fin))],
    worthWords(first, reader).map(({ name }, i) => [
      name,
      ...toed.map((mark) => worthWords(mark, reader)[i]?.turns ?? "-"),
    ]),
  );
}

/** What each rule for the sides would come to: both marks from the stringer and their own rails, and how far each would move. */
export function sidesLines({ sidesCompared, sides }: Finset, reader: Reader): readonly string[] {
  const rows = sidesCompared.flatMap(({ id, pairs }) =>
    pairs.map((pair) => [
      id === sides ? `${id} *` : id,
      pair.id,
      formatBareTapeLength(pair.leftFromStringerM, reader),
      formatBareTapeLength(pair.rightFromStringerM, reader),
      formatBareTapeLength(pair.leftFromRailM, reader),
      formatBareTapeLength(pair.rightFromRailM, reader),
      moved(pair.leftMovesM),
      moved(pair.rightMovesM),
    ]),
  );
  if (rows.length === 0) return [];
  return formatTable(
    [
      words("sides by (* in force)"),
      words("fin"),
      figure("left: from stringer"),
      figure("right"),
      figure("left: from rail"),
      figure("right"),
      figure("left moves mm"),
      figure("right mm"),
    ],
    rows,
  );
}

/** In millimetres in both systems, to a tenth. "In" would be read as inches. */
function moved(moveM: number): string {
  if (Math.abs(moveM) < 0.00005) return "-";
  const size = (Math.abs(moveM) * 1000).toFixed(1);
  return `${size} ${moveM > 0 ? "outward" : "inward"}`;
}

/** Room around each box, or each base without one. */
export function roomLines({ clearances, marks }: Finset, reader: Reader): readonly string[] {
  const show = (valueM: number | null): string =>
    valueM === null ? "-" : showQuantity(length(valueM), reader);
  return formatTable(
    [
      words("room at"),
      figure("foam above"),
      figure("foam beside"),
      figure("to rail"),
      figure("to stringer"),
      figure("to next"),
      figure("bottom bows by"),
    ],
    clearances.map((room) => [
      room.id,
      show(marks.find(({ id }) => id === room.id)?.foamUnderM ?? null),
      show(room.foamBesideM),
      show(room.toRailM),
      show(room.toStringerM),
      show(room.toNextM),
      `${show(Math.abs(room.bowUnderBaseM))} ${room.bowUnderBaseM > 0 ? "hollow" : "round"}`,
    ]),
  );
}

/** Both diagonals to each mark of a pair, by taut tape. */
export function diagonalLines({ pairs }: Finset, reader: Reader): readonly string[] {
  const rows = pairs.flatMap((pair) =>
    pair.diagonals.map((diagonal) => [
      `${pair.id}, ${diagonal.id.replace("-", " to ")} mark`,
      formatTapeLength(diagonal.leftTapeM, reader),
      formatTapeLength(diagonal.rightTapeM, reader),
      showQuantity(length(diagonal.differM), reader),
    ]),
  );
  if (rows.length === 0) return [];
  return formatTable([words("check by taut tape"), figure("left"), figure("right"), figure("differ")], rows);
}
