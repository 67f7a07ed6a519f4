import { getDocument, OPS } from "pdfjs-dist/legacy/build/pdf.mjs";

/** A reader of what a PDF draws that shares nothing with the writer: pdf.js walks the operators, this keeps the transforms. */
export interface PdfPage {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Straight strokes in millimetres from the page's upper left corner. */
  readonly segments: readonly Segment[];
  /** Strokes with curves in them, by the box around their ends. */
  readonly rounds: readonly Round[];
  readonly texts: ReadonlyArray<{
    readonly text: string;
    readonly x: number;
    readonly y: number;
    readonly widthMm: number;
    readonly isLevel: boolean;
  }>;
}

export interface Place {
  readonly x: number;
  readonly y: number;
}

export interface Segment {
  readonly from: Place;
  readonly to: Place;
  readonly widthMm: number;
  readonly colour: string;
  readonly dashed: boolean;
}

export interface Round {
  readonly centre: Place;
  readonly radiusMm: number;
}

type Matrix = readonly [number, number, number, number, number, number];

const MM_PER_POINT = 25.4 / 72;
/** pdf.js's own codes for the steps of a path. */
const [MOVE, LINE, CURVE, QUADRATIC, CLOSE] = [0, 1, 2, 3, 4];

export async function readPdf(bytes: Uint8Array): Promise<readonly PdfPage[]> {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const pages: PdfPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    pages.push(await readPage(await document.getPage(number)));
  }
  await document.destroy();
  return pages;
}

type PageProxy = Awaited<ReturnType<Awaited<ReturnType<typeof getDocument>["promise"]>["getPage"]>>;

async function readPage(page: PageProxy): Promise<PdfPage> {
  const [, , width = 0, height = 0] = page.view;
  const { fnArray, argsArray } = await page.getOperatorList();
  const walker = new Walker(height);
  for (const [i, operator] of fnArray.entries()) walker.step(operator, argsArray[i]);
  const { items } = await page.getTextContent();
  return {
    widthMm: width * MM_PER_POINT,
    heightMm: height * MM_PER_POINT,
    segments: walker.segments,
    rounds: walker.rounds,
    texts: items.flatMap((item) =>
      "str" in item && item.str.trim() !== ""
        ? [
            {
              text: item.str,
              x: Number(item.transform[4]) * MM_PER_POINT,
              y: (height - Number(item.transform[5])) * MM_PER_POINT,
              widthMm: item.width * MM_PER_POINT,
              isLevel: Math.abs(Number(item.transform[1])) < 1e-6,
            },
          ]
        : [],
    ),
  };
}

interface State {
  readonly matrix: Matrix;
  readonly widthMm: number;
  readonly colour: string;
  readonly dashed: boolean;
  readonly clip: Clip;
}

/** What may be drawn on, upright; each clip of ours is. */
interface Clip {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly foot: number;
}

const EVERYWHERE: Clip = {
  left: Number.NEGATIVE_INFINITY,
  top: Number.NEGATIVE_INFINITY,
  right: Number.POSITIVE_INFINITY,
  foot: Number.POSITIVE_INFINITY,
};

class Walker {
  readonly segments: Segment[] = [];
  readonly rounds: Round[] = [];
  private state: State = {
    matrix: [1, 0, 0, 1, 0, 0],
    widthMm: 0,
    colour: "",
    dashed: false,
    clip: EVERYWHERE,
  };
  private clipsNext = false;
  private readonly kept: State[] = [];

  constructor(private readonly heightPt: number) {}

  step(operator: number, args: unknown): void {
    const list = Array.isArray(args) ? args : [];
    if (operator === OPS.save) this.kept.push(this.state);
    if (operator === OPS.restore) this.state = this.kept.pop() ?? this.state;
    if (operator === OPS.transform)
      this.state = { ...this.state, matrix: multiply(this.state.matrix, list.map(Number)) };
    if (operator === OPS.setLineWidth) this.state = { ...this.state, widthMm: Number(list[0]) };
    if (operator === OPS.setDash) this.state = { ...this.state, dashed: list[0].length > 0 };
    if (operator === OPS.setStrokeRGBColor) this.state = { ...this.state, colour: String(list[0]) };
    if (operator === OPS.clip || operator === OPS.eoClip) this.clipsNext = true;
    if (operator !== OPS.constructPath) return;
    const path = Array.from(list[1][0] ?? [], Number);
    if (this.clipsNext) this.state = { ...this.state, clip: this.clipTo(path) };
    this.clipsNext = false;
    if (list[0] === OPS.stroke) this.stroke(path);
  }

  /** The corners of an upright rectangle, within what was clipped before. */
  private clipTo(path: readonly number[]): Clip {
    const corners: Place[] = [];
    for (let i = 0; path[i] === MOVE || path[i] === LINE; i += 3)
      corners.push(this.place(path[i + 1] ?? 0, path[i + 2] ?? 0));
    const { clip } = this.state;
    return {
      left: Math.max(clip.left, Math.min(...corners.map(({ x }) => x))),
      top: Math.max(clip.top, Math.min(...corners.map(({ y }) => y))),
      right: Math.min(clip.right, Math.max(...corners.map(({ x }) => x))),
      foot: Math.min(clip.foot, Math.max(...corners.map(({ y }) => y))),
    };
  }

  private stroke(path: readonly number[]): void {
    let [start, at]: Place[] = [this.place(0, 0), this.place(0, 0)];
    const corners: Place[] = [];
    let isRound = false;
    const draw = (to: Place) => {
      const shown = clipSegment(at ?? to, to, this.state.clip);
      if (shown !== null) this.segments.push({ ...this.ink(), ...shown });
      at = to;
    };
    for (let i = 0; i < path.length; ) {
      const code = path[i];
      const point = (offset: number) => this.place(path[i + offset] ?? 0, path[i + offset + 1] ?? 0);
      if (code === MOVE) {
        start = at = point(1);
        i += 3;
      } else if (code === LINE) {
        draw(point(1));
        i += 3;
      } else if (code === CURVE) {
        isRound = true;
        corners.push(point(5));
        at = point(5);
        i += 7;
      } else if (code === QUADRATIC) {
        throw new Error("no quadratic curve is expected");
      } else if (code === CLOSE) {
        if (start !== undefined) draw(start);
        i += 1;
      } else throw new Error(`unknown step ${code} of a path`);
    }
    if (isRound && isWithin(roundOf(corners).centre, this.state.clip)) this.rounds.push(roundOf(corners));
  }

  private ink(): Omit<Segment, "from" | "to"> {
    const { widthMm, colour, dashed } = this.state;
    return { widthMm, colour, dashed };
  }

  private place(x: number, y: number): Place {
    const [a, b, c, d, e, f] = this.state.matrix;
    return {
      x: (a * x + c * y + e) * MM_PER_POINT,
      y: (this.heightPt - (b * x + d * y + f)) * MM_PER_POINT,
    };
  }
}

/** A whole circle of four quarters: its ends lie at right angles around the middle. */
function roundOf(corners: readonly Place[]): Round {
  const xs = corners.map(({ x }) => x);
  const ys = corners.map(({ y }) => y);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [top, foot] = [Math.min(...ys), Math.max(...ys)];
  return { centre: { x: (left + right) / 2, y: (top + foot) / 2 }, radiusMm: (right - left) / 2 };
}

function multiply(
  [a, b, c, d, e, f]: Matrix,
  [g = 1, h = 0, i = 0, j = 1, k = 0, l = 0]: readonly number[],
): Matrix {
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}

const isWithin = ({ x, y }: Place, { left, top, right, foot }: Clip): boolean =>
  x >= left && x <= right && y >= top && y <= foot;

/** The part of a stretch that shows, or null. */
function clipSegment(
  from: Place,
  to: Place,
  { left, top, right, foot }: Clip,
): { from: Place; to: Place } | null {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  let [first, last] = [0, 1];
  const sides = [
    [-dx, from.x - left],
    [dx, right - from.x],
    [-dy, from.y - top],
    [dy, foot - from.y],
  ] as const;
  for (const [leaves, room] of sides) {
    if (leaves === 0 && room < 0) return null;
    if (leaves < 0) first = Math.max(first, room / leaves);
    if (leaves > 0) last = Math.min(last, room / leaves);
  }
  if (first >= last) return null;
  const at = (share: number) => ({ x: from.x + share * dx, y: from.y + share * dy });
  return { from: at(first), to: at(last) };
}
