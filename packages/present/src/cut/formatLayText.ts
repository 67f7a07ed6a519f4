import { angle, fraction, length, type RollPoint } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { type Column, formatTable } from "../text/formatTable";
import { wrapText } from "../text/wrapText";
import { pieceName } from "../words/pieceName";
import type { RollLay } from "./RollLay";

/** A lay that was searched for, with what it is measured against. */
export interface SearchedLay extends RollLay {
  readonly placed: ReadonlyArray<RollLay["placed"][number] & { readonly turnRad: number }>;
  readonly usedRatio: number;
  /** No lay can be shorter. */
  readonly boundM: number;
  /** One piece after another by their boxes. */
  readonly boxesM: number;
}

const words = (head: string): Column => ({ head, align: "left" });
const figure = (head: string): Column => ({ head, align: "right" });

/** What to buy of each cloth, in sentences. */
export function layWords(lay: SearchedLay, reader: Reader): readonly string[] {
  const t = tell(reader);
  return [
    t`${lay.cloth}: buy ${length(lay.lengthM)} of a roll ${length(lay.widthM)} wide; ${fraction(lay.usedRatio)} of it is used.`,
    t`By their boxes one after another the pieces take ${length(lay.boxesM)}; no lay can be shorter than ${length(lay.boundM)}.`,
  ];
}

/** Cloth that is cut on the board takes its whole width and hangs over: a roll bought by the flat shapes would be too short. */
function rolledNote(name: string, reader: Reader): string {
  const t = tell(reader);
  return t`${name} is planned with its cloth rolled out and cut on the board, which takes more than this: buy by the plan's own cut list, or name glass.cutting "pattern" and cut by these shapes.`;
}

/**
 * The lays as a page for the terminal: what to buy, and each piece with its place from the free end and from the right-hand edge.
 * @param rolled the boards whose cloth is planned to be cut on the board
 */
export function formatLayText(
  lays: readonly SearchedLay[],
  { reader, rolled }: { readonly reader: Reader; readonly rolled: readonly string[] },
): string {
  const t = tell(reader);
  const show = (valueM: number): string => showQuantity(length(valueM, "coarse"), reader);
  const blocks = lays.map((lay) => {
    const rows = lay.placed
      .map(({ id, points, turnRad }) => ({ id, turnRad, box: boxOf(points) }))
      .sort((a, b) => a.box.fromM - b.box.fromM);
    return [
      ...layWords(lay, reader).flatMap((sentence) => wrapText(sentence, { hanging: 2 })),
      ...formatTable(
        [
          words(t`piece`),
          words(t`lies`),
          figure(t`begins at`),
          figure(t`ends at`),
          figure(t`from the edge`),
          figure(t`wide`),
        ],
        rows.map(({ id, turnRad, box }) => [
          pieceName(id, reader),
          wayWords(turnRad, reader),
          show(box.fromM),
          show(box.toM),
          show(box.lowM),
          show(box.highM - box.lowM),
        ]),
      ),
    ].join("\n");
  });
  const note = t`Cut to the flat shapes (lapline template FILE --of cloth), warp along the roll; begins and ends count from the roll's free end.`;
  const notes = [...wrapText(note), ...rolled.flatMap((name) => wrapText(rolledNote(name, reader)))];
  return `${[...blocks, notes.join("\n")].join("\n\n")}\n`;
}

const QUARTER_RAD = Math.PI / 2;

/** Which end of a piece lies nearer to the roll's free end. */
function wayWords(turnRad: number, reader: Reader): string {
  const t = tell(reader);
  const quarters = turnRad / QUARTER_RAD;
  if (Math.abs(quarters % 4) < 1e-6) return t`tail first`;
  if (Math.abs((quarters % 4) - 2) < 1e-6) return t`nose first`;
  if (Math.abs((quarters % 2) - 1) < 1e-6) return t`across`;
  return t`at ${angle(turnRad)}`;
}

function boxOf(points: readonly RollPoint[]) {
  const alongM = points.map((point) => point.alongM);
  const acrossM = points.map((point) => point.acrossM);
  return {
    fromM: Math.min(...alongM),
    toM: Math.max(...alongM),
    lowM: Math.max(0, Math.min(...acrossM)),
    highM: Math.max(...acrossM),
  };
}
