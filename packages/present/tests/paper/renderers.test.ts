import DxfParser, { type IArcEntity, type IEntity, type ILineEntity, type ITextEntity } from "dxf-parser";
import { describe, expect, test } from "vitest";
import type { Drawing, Item } from "../../src/drawing/Drawing";
import { drawingToDxf } from "../../src/paper/dxf/drawingToDxf";
import type { PaperBlock } from "../../src/paper/pdf/PaperDocument";
import { renderPdf } from "../../src/paper/pdf/renderPdf";
import { darkRuns } from "./measurePicture";
import { renderPage } from "./poppler";
import { readPdf } from "./readPdf";

const SIZE = { widthMm: 120, heightMm: 80 };
const META = { title: "t", subject: "s", language: "en", createdAt: new Date(0) };

const pdfOf = (items: readonly Item[], more: Partial<PaperBlock> = {}) =>
  renderPdf(META, () => [{ ...SIZE, blocks: [{ tag: "Figure", alt: "all", items, ...more }] }]);

function dxfOf(items: readonly Item[]): readonly IEntity[] {
  const nought = { x: 0, y: 0 };
  const frame = { origin: nought, alongMmPerM: nought, acrossMmPerM: nought };
  const drawing: Drawing = { ...SIZE, frame, notes: [], layers: [{ id: "all", items }] };
  const dxf = new DxfParser().parseSync(drawingToDxf(drawing));
  if (dxf === null) throw new Error("the file could not be read");
  return dxf.entities;
}

const isOf =
  <Entity extends IEntity>(type: string) =>
  (entity: IEntity): entity is Entity =>
    entity.type === type;

const LINE: Item = {
  kind: "line",
  pen: "thick",
  from: { x: 12.345678, y: 70 },
  to: { x: 100.000001, y: 3.3 },
};
const ARC: Item = {
  kind: "arc",
  pen: "thin",
  centre: { x: 50, y: 40 },
  radiusMm: 10,
  fromRad: 0,
  toRad: Math.PI / 2,
};
const CIRCLE: Item = { ...ARC, radiusMm: 7.5, toRad: 2 * Math.PI };
const TEXT: Item = {
  kind: "text",
  at: { x: 60, y: 30 },
  text: "11 5/8 in, 3°",
  sizeMm: 4,
  anchor: "start",
  role: "note",
};
const DIMENSION: Item = {
  kind: "dimension",
  measures: "x",
  from: { x: 10, y: 60 },
  to: { x: 90, y: 60 },
  lineAt: 66,
  text: "80 mm",
  sizeMm: 3.5,
};

describe("the same drawing, read back", () => {
  test("lines, to a hundred-thousandth of a millimetre in the file of each kind", async () => {
    const [page] = await readPdf(await pdfOf([LINE]));
    expect(page?.segments).toHaveLength(1);
    const [segment] = page?.segments ?? [];
    expect(segment?.from.x).toBeCloseTo(12.345678, 4);
    expect(segment?.from.y).toBeCloseTo(70, 4);
    expect(segment?.to.x).toBeCloseTo(100.000001, 4);
    expect(segment?.widthMm).toBe(0.5);
    const [line] = dxfOf([LINE]).filter(isOf<ILineEntity>("LINE"));
    expect(line?.vertices[0]).toMatchObject({ x: 12.345678, y: 10 });
    expect(line?.vertices[1]?.y).toBeCloseTo(76.7, 9);
  });

  test("a quarter turns the same way: clockwise on the sheet, from the right to the foot", async () => {
    const [arc] = dxfOf([ARC]).filter(isOf<IArcEntity>("ARC"));
    expect(arc?.center).toMatchObject({ x: 50, y: 40 });
    // Anticlockwise in the file, from the foot (three quarters of a turn) to the right (a whole one).
    expect(arc?.startAngle).toBeCloseTo(1.5 * Math.PI, 6);
    expect((arc?.endAngle ?? 0) % (2 * Math.PI)).toBeCloseTo(0, 6);
    const picture = renderPage(await pdfOf([ARC]), 1);
    const half = 10 * Math.SQRT1_2;
    expect(darkRuns(picture, { level: 40 + half, from: 50, to: 70 })[0]).toBeCloseTo(50 + half, 1);
    expect(darkRuns(picture, { level: 40 - half, from: 30, to: 70 })).toEqual([]);
  });

  test("whole circles", async () => {
    const [page] = await readPdf(await pdfOf([CIRCLE]));
    expect(page?.rounds[0]?.radiusMm).toBeCloseTo(7.5, 4);
    expect(page?.rounds[0]?.centre.y).toBeCloseTo(40, 4);
    expect(dxfOf([CIRCLE]).map(({ type }) => type)).toEqual(["CIRCLE"]);
  });

  test("text, with its fraction as it is written", async () => {
    const [page] = await readPdf(await pdfOf([TEXT]));
    expect(page?.texts.map(({ text }) => text).join("")).toBe("11 5/8 in, 3°");
    expect(page?.texts[0]?.x).toBeCloseTo(60, 3);
    expect(page?.texts[0]?.y).toBeCloseTo(30, 3);
    const [text] = dxfOf([TEXT]).filter(isOf<ITextEntity>("TEXT"));
    expect(text).toMatchObject({ text: "11 5/8 in, 3°", startPoint: { x: 60, y: 50 } });
  });

  test("text that ends at a place, and text that reads up the sheet", async () => {
    const ending = await pdfOf([{ ...TEXT, anchor: "end", text: "right" }]);
    const [right] = (await readPdf(ending))[0]?.texts ?? [];
    expect((right?.x ?? 0) + (right?.widthMm ?? 0)).toBeCloseTo(60, 2);
    const turned = await pdfOf([{ ...TEXT, turnRad: -Math.PI / 2, text: "up" }]);
    const [up] = (await readPdf(turned))[0]?.texts ?? [];
    expect(up?.isLevel).toBe(false);
    const [text] = dxfOf([{ ...TEXT, turnRad: -Math.PI / 2 }]).filter(isOf<ITextEntity>("TEXT"));
    expect(text?.rotation).toBe(90);
  });

  test("a dimension with its line, its arrowheads and its figure", async () => {
    const [page] = await readPdf(await pdfOf([DIMENSION]));
    expect(page?.texts[0]?.text).toBe("80 mm");
    expect(page?.segments.some(({ from, to }) => Math.abs(Math.abs(to.x - from.x) - 80) < 0.001)).toBe(true);
    const types = dxfOf([DIMENSION]).map(({ type }) => type);
    expect(types.filter((type) => type === "LINE")).toHaveLength(3);
    expect(types).toContain("TEXT");
  });
});

describe("areas on paper", () => {
  const points = [
    { x: 20, y: 20 },
    { x: 60, y: 20 },
    { x: 60, y: 60 },
    { x: 20, y: 60 },
  ];

  test.each(["foam", "cloth", "proud", "resin", "tape", "solid"] as const)(
    "%s shows within its edge only",
    async (hatch) => {
      const { greys, widthPx, pxPerMm } = renderPage(await pdfOf([{ kind: "hatch", hatch, points }]), 1);
      let [inside, outside] = [0, 0];
      greys.forEach((grey, i) => {
        if (grey > 250) return;
        const [x, y] = [(i % widthPx) / pxPerMm, Math.floor(i / widthPx) / pxPerMm];
        if (x > 19.9 && x < 60.1 && y > 19.9 && y < 60.1) inside += 1;
        else outside += 1;
      });
      expect(inside).toBeGreaterThan(500);
      expect(outside).toBe(0);
    },
  );

  test("a blank one covers what was drawn before", async () => {
    const picture = renderPage(await pdfOf([LINE, { kind: "hatch", hatch: "blank", points }]), 1);
    expect(darkRuns(picture, { level: 45, from: 21, to: 59 })).toEqual([]);
  });
});

test("a clip hides what lies outside, and only for its own block", async () => {
  const clip = { x: 0, y: 0, widthMm: 60, heightMm: 80 };
  const blocks: readonly PaperBlock[] = [
    { tag: "Figure", alt: "a", items: [{ ...LINE, from: { x: 10, y: 20 }, to: { x: 110, y: 20 } }], clip },
    { tag: "Artifact", items: [{ ...LINE, from: { x: 10, y: 40 }, to: { x: 110, y: 40 } }] },
  ];
  const picture = renderPage(await renderPdf(META, () => [{ ...SIZE, blocks }]), 1);
  expect(darkRuns(picture, { upright: 80, from: 10, to: 70 }).map(Math.round)).toEqual([40]);
  expect(darkRuns(picture, { upright: 30, from: 10, to: 70 }).map(Math.round)).toEqual([20, 40]);
});

test("letters that the font has not got are boxes, and stop nothing", async () => {
  const [page] = await readPdf(await pdfOf([{ ...TEXT, text: "日本 Łódź 😀" }]));
  expect(page?.texts.map(({ text }) => text).join("")).toContain("Łódź");
});
