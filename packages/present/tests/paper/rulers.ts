import type { PdfPage, Segment } from "./readPdf";

/** Both rulers of a page, as they are found among its lines. */
export interface Rulers {
  readonly level: Ruler;
  readonly upright: Ruler;
}

export interface Ruler {
  /** The long line, from its start. */
  readonly line: Segment;
  readonly lengthMm: number;
  /** From one end tick to the other on the millimetre side and on the inch side. */
  readonly hundredMm: number;
  readonly fourInchesMm: number;
  /** From the start to the one tick of middling length: 60 or 80 mm, for the square. */
  readonly checkedMm: number;
}

/** Rulers stand within this of the left and the lower edge, and nothing else does. */
const STRIP_MM = 14;

/** Finds the rulers by where they stand and how long their ticks are. Throws where there is not one of each. */
export function findRulers(page: PdfPage): Rulers {
  const low = page.segments.filter(({ from, to }) => Math.min(from.y, to.y) > page.heightMm - STRIP_MM - 6);
  const left = page.segments.filter(({ from, to }) => Math.max(from.x, to.x) < STRIP_MM + 6);
  return {
    level: readRuler(low, { along: "x", across: "y", edgeMm: page.heightMm - STRIP_MM, outward: 1 }),
    upright: readRuler(left, { along: "y", across: "x", edgeMm: STRIP_MM, outward: -1 }),
  };
}

interface Way {
  readonly along: "x" | "y";
  readonly across: "x" | "y";
  readonly edgeMm: number;
  /** Towards which the millimetre ticks point. */
  readonly outward: 1 | -1;
}

function readRuler(segments: readonly Segment[], { along, across, edgeMm, outward }: Way): Ruler {
  const lines = segments.filter(
    ({ from, to }) =>
      Math.abs(from[across] - to[across]) < 1e-4 &&
      Math.abs(to[along] - from[along]) > 80 &&
      outward * (from[across] - edgeMm) > 0,
  );
  const [line] = lines;
  if (line === undefined || lines.length !== 1) throw new Error(`${lines.length} rulers along ${along}`);
  const ticks = segments.filter(
    ({ from, to }) =>
      Math.abs(from[along] - to[along]) < 1e-4 && Math.abs(from[across] - line.from[across]) < 1e-4,
  );
  const longOf = ({ from, to }: Segment) => outward * (to[across] - from[across]);
  const scale = Math.max(...ticks.map(longOf)) / 4;
  const endTicks = (isEnd: (longMm: number) => boolean) =>
    ticks.filter((tick) => isEnd(longOf(tick) / scale)).map(({ from }) => from[along]);
  const span = (places: readonly number[]): number => {
    if (places.length !== 2) throw new Error(`${places.length} end ticks along ${along}`);
    return Math.abs((places[1] ?? 0) - (places[0] ?? 0));
  };
  const [checked] = endTicks((longMm) => longMm > 2.5 && longMm < 3.5);
  return {
    line,
    lengthMm: Math.abs(line.to[along] - line.from[along]),
    hundredMm: span(endTicks((longMm) => longMm > 3.5)),
    fourInchesMm: span(endTicks((longMm) => longMm < -3.5)),
    checkedMm: Math.abs((checked ?? Number.NaN) - line.from[along]),
  };
}
