import { wrapToWidth } from "../../../drawing/wrapToWidth";
import type { TextStyle } from "../../pdf/Typesetter";
import { ACT, BODY, NOTE, STRONG } from "../look";
import type { SheetRoom } from "./SheetRoom";

export interface GridColumn {
  readonly head: string;
  /** A `tick` column's cell has a word for each box. */
  readonly kind: "words" | "name" | "figure" | "act" | "blank" | "tick";
  /** For a blank: room to write in. */
  readonly leastMm?: number;
}

/** Words are read, names are looked for, figures are measured by, and acts are what is mixed, cut or weighed. */
const CELL_STYLES: Readonly<Record<GridColumn["kind"], TextStyle>> = {
  words: BODY,
  name: STRONG,
  figure: STRONG,
  act: ACT,
  blank: BODY,
  tick: BODY,
};
export interface LaidColumn {
  readonly kind: GridColumn["kind"];
  readonly style: TextStyle;
  readonly head: readonly string[];
  readonly xMm: number;
  readonly widthMm: number;
  wrap(text: string): readonly string[];
}

const GAP_MM = 3.6;
const TICK_STEP_MM = 5;
/** A column of words gives way no further. */
const LEAST_WORDS_MM = 24;

/**
 * Shares the width out: figures take what they need, heads and then blanks share what is left over, words give way where it is
 * too little.
 */
export function layOutColumns(
  columns: readonly GridColumn[],
  rows: ReadonlyArray<readonly string[]>,
  { type, widthMm }: SheetRoom,
): readonly LaidColumn[] {
  const headMm = (text: string) => type.widthMm(text, NOTE);
  const cellMm = (text: string, kind: GridColumn["kind"]) =>
    kind === "tick" ? words(text).length * TICK_STEP_MM : type.widthMm(text, CELL_STYLES[kind]);
  const widths = columns.map(({ head, kind, leastMm = 0 }, c) =>
    Math.max(leastMm, ...words(head).map(headMm), ...rows.map((row) => cellMm(row[c] ?? "", kind))),
  );
  const freeMm = () => widthMm - widths.reduce((sum, each) => sum + each, 0) - GAP_MM * (columns.length - 1);
  giveWay(columns, widths, freeMm);
  const wishes = columns.map(({ head }, c) => Math.max(0, headMm(head) - (widths[c] ?? 0)));
  const wished = wishes.reduce((sum, wish) => sum + wish, 0);
  const share = wished === 0 ? 0 : Math.min(1, Math.max(0, freeMm()) / wished);
  const blanks = columns.filter(({ kind }) => kind === "blank").length;
  const spareMm = Math.max(0, freeMm() - share * wished);
  let xMm = 0;
  return columns.map(({ head, kind }, c) => {
    const toWrite = kind === "blank" ? spareMm / blanks : 0;
    const columnMm = (widths[c] ?? 0) + share * (wishes[c] ?? 0) + toWrite + 0.01;
    const style = CELL_STYLES[kind];
    const laid: LaidColumn = {
      kind,
      style,
      head: wrapToWidth(head, columnMm, headMm),
      xMm,
      widthMm: columnMm,
      wrap: (text) =>
        kind === "tick" ? words(text) : wrapToWidth(text, columnMm, (part) => type.widthMm(part, style)),
    };
    xMm += columnMm + GAP_MM;
    return laid;
  });
}

const words = (text: string): string[] => text.split(" ").filter((word) => word !== "");

/** The widest column of words is broken over lines first. */
function giveWay(columns: readonly GridColumn[], widths: number[], freeMm: () => number): void {
  while (freeMm() < 0) {
    const widest = columns.reduce(
      (best, { kind }, c) =>
        (kind === "words" || kind === "name") && (best === -1 || (widths[c] ?? 0) > (widths[best] ?? 0))
          ? c
          : best,
      -1,
    );
    const nowMm = widths[widest];
    if (nowMm === undefined || nowMm <= LEAST_WORDS_MM) return;
    widths[widest] = Math.max(LEAST_WORDS_MM, nowMm + Math.max(freeMm(), -4));
  }
}
