import { angle, length, type Plan } from "@lapline/engine";
import { formatBareLength } from "../../board/formatBareLength";
import type { Reader } from "../../language/Reader";
import { showQuantity } from "../../language/showQuantity";
import { tell } from "../../language/tell";
import { tellText } from "../../language/tellText";
import { formatDiagonalWorth } from "../../words/formatDiagonalWorth";
import { formatDifference } from "../../words/formatDifference";
import { formatBareTapeLength, formatTapeLength } from "../../words/formatTapeLength";
import { tailWord } from "../../words/tailWords";
import { worthWords } from "../../words/worthWords";
import { type Column, formatTable } from "../formatTable";

type Finset = NonNullable<Plan["finset"]>;

export const words = (head: string): Column => ({ head, align: "left" });
export const figure = (head: string): Column => ({ head, align: "right" });

/** Both ends of each base, by tape from the tail, from the line and from the rail; of a swallow tail from its crotch too. */
export function markLines({ marks, line }: Finset, reader: Reader): readonly string[] {
  const t = tell(reader);
  const bare = (valueM: number): string => formatBareTapeLength(valueM, reader);
  const hasCrotch = line.crotchFromTailM !== null;
  const crotch = (point: (typeof marks)[number]["trailing"]): readonly string[] =>
    hasCrotch ? [bare(point.fromCrotchTapeM ?? 0)] : [];
  const crotchHead = hasCrotch ? [figure(t`from crotch`)] : [];
  return formatTable(
    [
      words(t`fin`),
      figure(t`trailing: from ${tailWord(line)}`),
      ...crotchHead,
      figure(t`from line`),
      figure(t`from rail`),
      figure(t`leading: from ${tailWord(line)}`),
      ...crotchHead,
      figure(t`from line`),
    ],
    marks.map((mark) => [
      tellText(mark.id, reader),
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
  const t = tell(reader);
  const show = (valueRad: number): string => showQuantity(angle(valueRad), reader);
  return formatTable(
    [
      words(t`fin`),
      figure(t`base`),
      figure(t`toe over base`),
      figure(t`toe`),
      figure(t`string beside nose`),
      figure(t`or meets line beyond nose`),
      figure(t`cant`),
      figure(t`true cant`),
    ],
    marks.map((mark) => [
      tellText(mark.id, reader),
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
  const t = tell(reader);
  const toed = marks.filter(({ side }) => side === "left");
  const [first] = toed;
  if (first === undefined) return [];
  return formatTable(
    [words(t`toe turned by`), ...toed.map(({ fin }) => figure(tellText(fin, reader)))],
    worthWords(first, reader).map(({ name }, i) => [
      name,
      ...toed.map((mark) => worthWords(mark, reader)[i]?.turns ?? "-"),
    ]),
  );
}

/** What each rule for the sides would come to: both marks from the stringer and their own rails, and how far each would move. */
export function sidesLines({ sidesCompared, sides }: Finset, reader: Reader): readonly string[] {
  const t = tell(reader);
  const rows = sidesCompared.flatMap(({ id, pairs }) =>
    pairs.map((pair) => [
      id === sides ? `${tellText(id, reader)}*` : tellText(id, reader),
      tellText(pair.id, reader),
      formatBareTapeLength(pair.leftFromStringerM, reader),
      formatBareTapeLength(pair.rightFromStringerM, reader),
      formatBareTapeLength(pair.leftFromRailM, reader),
      formatBareTapeLength(pair.rightFromRailM, reader),
      moved(pair.leftMovesM, reader),
      moved(pair.rightMovesM, reader),
    ]),
  );
  if (rows.length === 0) return [];
  return formatTable(
    [
      words(t`sides by (* in force)`),
      words(t`fin`),
      figure(t`left: from stringer`),
      figure(t`right`),
      figure(t`left: from rail`),
      figure(t`right`),
      figure(t`left moves mm`),
      figure(t`right mm`),
    ],
    rows,
  );
}

/** In millimetres in both systems, to a tenth. "In" would be read as inches. */
function moved(moveM: number, reader: Reader): string {
  const t = tell(reader);
  if (Math.abs(moveM) < 0.00005) return "-";
  const size = (Math.abs(moveM) * 1000).toFixed(1);
  return moveM > 0 ? t`${size} outward` : t`${size} inward`;
}

/** Room around each box, or each base without one. */
export function roomLines({ clearances, marks }: Finset, reader: Reader): readonly string[] {
  const t = tell(reader);
  const show = (valueM: number | null): string =>
    valueM === null ? "-" : showQuantity(length(valueM), reader);
  return formatTable(
    [
      words(t`room at`),
      figure(t`foam above`),
      figure(t`foam beside`),
      figure(t`to rail`),
      figure(t`to stringer`),
      figure(t`to next`),
      figure(t`bottom bows by`),
    ],
    clearances.map((room) => [
      tellText(room.id, reader),
      show(marks.find(({ id }) => id === room.id)?.foamUnderM ?? null),
      show(room.foamBesideM),
      show(room.toRailM),
      show(room.toStringerM),
      show(room.toNextM),
      t`${show(Math.abs(room.bowUnderBaseM))} ${room.bowUnderBaseM > 0 ? "hollow" : "round"}`,
    ]),
  );
}

type Diagonal = Finset["pairs"][number]["diagonals"][number];

function diagonalWords({ id, from }: Pick<Diagonal, "id" | "from">, reader: Reader): string {
  const t = tell(reader);
  const words: Readonly<Record<string, string>> = {
    "nose-trailing": t`nose to trailing mark`,
    "nose-leading": t`nose to leading mark`,
    "tail-trailing": t`tail to trailing mark`,
    "tail-leading": t`tail to leading mark`,
    "crotch-trailing": t`crotch to trailing mark`,
    "crotch-leading": t`crotch to leading mark`,
  };
  return words[`${from}-${id.endsWith("trailing") ? "trailing" : "leading"}`] ?? id;
}

/** Both diagonals to each mark of a pair, by taut tape, and what a millimetre at one mark changes them by. */
export function diagonalLines({ pairs }: Finset, reader: Reader): readonly string[] {
  const t = tell(reader);
  const rows = pairs.flatMap((pair) =>
    pair.diagonals.map((diagonal) => [
      t`${pair.id}, ${diagonalWords(diagonal, reader)}`,
      formatTapeLength(diagonal.leftTapeM, reader),
      formatTapeLength(diagonal.rightTapeM, reader),
      formatDifference(diagonal.differM, reader),
      formatDiagonalWorth(diagonal.acrossWorthRatio, reader),
      formatDiagonalWorth(diagonal.alongWorthRatio, reader),
    ]),
  );
  if (rows.length === 0) return [];
  return formatTable(
    [
      words(t`check by taut tape`),
      figure(t`left`),
      figure(t`right`),
      figure(t`differ, mm`),
      figure(t`1 mm across: mm`),
      figure(t`1 mm along: mm`),
    ],
    rows,
  );
}
