import { angle, say } from "@lapline/engine";
import { formatBareLength } from "../../../board/formatBareLength";
import type { Reader } from "../../../language/Reader";
import { showQuantity } from "../../../language/showQuantity";
import { type Tell, tell } from "../../../language/tell";
import { tellPhrase } from "../../../language/tellPhrase";
import { formatDiagonalWorth } from "../../../words/formatDiagonalWorth";
import { formatBareTapeLength, formatTapeLength } from "../../../words/formatTapeLength";
import { tailWord } from "../../../words/tailWords";
import { nameWords } from "../../jobsheet/nameWords";
import type { TemplateTable } from "../Template";
import type { Finset } from "./FinSheet";

/** Every mark's distances and angles, and the diagonals of each pair, as the plan has them. */
export function finTables(finset: Finset, reader: Reader): readonly TemplateTable[] {
  return [
    markTable(finset, reader),
    ...(finset.verify.boxes.length > 0 ? [cutOutTable(finset, reader)] : []),
    ...(finset.pairs.length > 0 ? [diagonalTable(finset, reader)] : []),
  ];
}

function markTable({ marks, line }: Finset, reader: Reader): TemplateTable {
  const show = (valueM: number) => formatBareTapeLength(valueM, reader);
  const turn = (valueRad: number) => showQuantity(angle(valueRad), reader);
  const t = tell(reader);
  const hasCrotch = line.crotchFromTailM !== null;
  const crotch = ({ fromCrotchTapeM }: (typeof marks)[number]["trailing"]) =>
    hasCrotch ? [show(fromCrotchTapeM ?? 0)] : [];
  const crotchHead = hasCrotch ? [t`from crotch`] : [];
  return {
    title: t`Marks, in ${unitWord(reader)}`,
    wordColumns: 1,
    columns: [
      t`mark`,
      t`trailing from ${tailWord(line)}`,
      ...crotchHead,
      t`from line`,
      t`from rail`,
      t`leading from ${tailWord(line)}`,
      ...crotchHead,
      t`from line`,
      t`string beside nose`,
      t`toe`,
      t`cant`,
    ],
    rows: marks.map((mark) => [
      nameWords(mark.id, reader),
      show(mark.trailing.fromTailTapeM),
      ...crotch(mark.trailing),
      show(mark.trailing.fromCentrelineM),
      show(mark.trailing.fromRailM),
      show(mark.leading.fromTailTapeM),
      ...crotch(mark.leading),
      show(mark.leading.fromCentrelineM),
      mark.side === "centre" ? "–" : stringFigure(mark.aimBesideNoseM, show, t),
      turn(mark.toeRad),
      turn(mark.cantRad),
    ]),
  };
}

const stringFigure = (aimM: number, show: (valueM: number) => string, t: Tell) =>
  aimM < 0 ? t`${show(-aimM)} over` : show(aimM);

/** Pockets alike in one row. Depths count from the surface that the router stands on. */
function cutOutTable({ verify }: Finset, reader: Reader): TemplateTable {
  const show = (valueM: number) => formatBareLength(valueM, reader, "fine");
  const t = tell(reader);
  const rows: Array<{ readonly ids: string[]; readonly figures: readonly string[] }> = [];
  for (const { id, cutOut, bits } of verify.boxes) {
    const bitM = bits.find((bit) => bit.id === reader.units)?.diameterM ?? null;
    const sizes = [cutOut.lengthM, cutOut.widthM, cutOut.depthM].map(show);
    const figures = [...sizes, bitM === null ? "–" : show(bitM)];
    const alike = rows.find((row) => row.figures.join(" ") === figures.join(" "));
    if (alike === undefined) rows.push({ ids: [id], figures });
    else alike.ids.push(id);
  }
  return {
    title: t`Cut-outs, in ${unitWord(reader)}, deep from ${SURFACES[verify.surface]}`,
    wordColumns: 1,
    columns: [t`box`, t`long`, t`wide`, t`deep`, t`bit at most`],
    rows: rows.map(({ ids, figures }) => [ids.map((id) => nameWords(id, reader)).join(", "), ...figures]),
  };
}

const SURFACES: Readonly<Record<Finset["verify"]["surface"], string>> = {
  foam: "the foam",
  laminate: "the laminate",
  fill: "the fill coat",
};

const DIAGONAL_WORDS = {
  "nose-trailing": say`nose tip to trailing`,
  "nose-leading": say`nose tip to leading`,
  "tail-trailing": say`tail's middle to trailing`,
  "tail-leading": say`tail's middle to leading`,
  "crotch-trailing": say`crotch to trailing`,
  "crotch-leading": say`crotch to leading`,
} as const;

function diagonalTable({ pairs }: Finset, reader: Reader): TemplateTable {
  const t = tell(reader);
  const show = (valueM: number) => formatTapeLength(valueM, reader);
  return {
    title: t`Check diagonals, by taut tape along the bottom`,
    wordColumns: 2,
    columns: [t`pair`, t`from and to`, t`left`, t`right`, t`1 mm across is worth`],
    rows: pairs.flatMap((pair) =>
      pair.diagonals.map(({ id, from, leftTapeM, rightTapeM, acrossWorthRatio }) => [
        nameWords(pair.id, reader),
        tellPhrase(DIAGONAL_WORDS[`${from}-${id.endsWith("trailing") ? "trailing" : "leading"}`], reader),
        show(leftTapeM),
        show(rightTapeM),
        `${formatDiagonalWorth(acrossWorthRatio, reader)} mm`,
      ]),
    ),
  };
}

const unitWord = (reader: Reader) => (reader.units === "inch" ? "inches" : "millimetres");
