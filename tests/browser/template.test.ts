import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { type Plan, planBuild } from "@lapline/engine";
import { buildTemplate, templateSvg } from "@lapline/present/paper";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launchBrowser } from "./launchBrowser";

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** The figure, millimetres. */
const WITHIN_MM = 0.01;
/** CSS: an inch is 96 px. */
const MM_PER_PX = 25.4 / 96;

const PLANS = DEMO_BOARDS.map(({ id, text }) => {
  const read = readBoardFile(text);
  if (!read.ok) throw new Error(`${id} cannot be read`);
  return { id, plan: planBuild(read.board) };
});

function svgOf(plan: Plan, of: "fins" | "outline" | "cloth"): string {
  const template = buildTemplate(plan, { of, reader: { units: "mm", language: "en" } });
  if (template === null) throw new Error(`no ${of}`);
  return templateSvg(template, { date: "2026-04-11" });
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
}

/** The boxes of all paths that a selector finds, as the browser lays them out on the screen, in millimetres. */
async function measure(svg: string, selector: string): Promise<readonly Box[]> {
  const page = await browser.newPage();
  try {
    await page.setContent(`<body style="margin:0">${svg}</body>`);
    const boxes = await page.evaluate((wanted) => {
      return [...document.querySelectorAll<SVGGraphicsElement>(wanted)].map((element) => {
        const { x, y, width, height } = element.getBBox();
        const matrix = element.getScreenCTM();
        if (matrix === null) throw new Error("not on the screen");
        const from = new DOMPoint(x, y).matrixTransform(matrix);
        const to = new DOMPoint(x + width, y + height).matrixTransform(matrix);
        return { left: from.x, right: to.x, top: from.y, foot: to.y };
      });
    }, selector);
    return boxes.map(({ left, right, top, foot }) => ({
      left: left * MM_PER_PX,
      right: right * MM_PER_PX,
      top: top * MM_PER_PX,
      foot: foot * MM_PER_PX,
    }));
  } finally {
    await page.close();
  }
}

const middleOf = ({ left, right, top, foot }: Box) => ({ x: (left + right) / 2, y: (top + foot) / 2 });

describe.each(PLANS)("$id, the SVG in a browser", ({ plan }) => {
  test("has every fin mark where the plan has it", async () => {
    const rings = (await measure(svgOf(plan, "fins"), ".layer-marks path")).filter(
      // The rings around the marks; the arms of their crosses are lines without an area.
      ({ left, right, top, foot }) => Math.abs(right - left - 4) < 0.01 && Math.abs(foot - top - 4) < 0.01,
    );
    const found = rings.map(middleOf);
    const wanted = wantedMarks(plan);
    expect(found).toHaveLength(wanted.length);
    const [first, start] = [found[0], wanted[0]];
    if (first === undefined || start === undefined) throw new Error("no mark");
    for (const [i, mark] of wanted.entries()) {
      expect(Math.abs((found[i]?.x ?? 0) - first.x - (mark.x - start.x))).toBeLessThan(WITHIN_MM);
      expect(Math.abs((found[i]?.y ?? 0) - first.y + (mark.up - start.up))).toBeLessThan(WITHIN_MM);
    }
  });

  test("has rulers of 4 in, along and up", async () => {
    const lines = await measure(svgOf(plan, "fins"), ".layer-rulers path");
    const longest = (side: (box: Box) => number) => Math.max(...lines.map(side));
    expect(longest(({ left, right }) => right - left)).toBeCloseTo(101.6, 3);
    expect(longest(({ top, foot }) => foot - top)).toBeCloseTo(101.6, 3);
  });

  test("has halves as long and as wide as the plan's outline", async () => {
    const { shape } = plan;
    if (shape === null) throw new Error("no shape");
    for (const side of ["left", "right"] as const) {
      const [box] = await measure(svgOf(plan, "outline"), `.layer-${side}-outline path`);
      if (box === undefined) throw new Error(`no ${side} half`);
      const widestMm = 1000 * Math.max(...shape.outline.map((point) => point[`${side}M`]));
      expect(Math.abs(box.right - box.left - widestMm)).toBeLessThan(WITHIN_MM);
      expect(Math.abs(box.foot - box.top - 1000 * shape.lengthTapeM)).toBeLessThan(WITHIN_MM);
    }
  });

  test("has each piece of cloth at its size", async () => {
    const boxes = await measure(svgOf(plan, "cloth"), "[class$=-outline] path");
    for (const { lengthM, widthM } of plan.layup?.pieces ?? []) {
      const isThere = boxes.some(
        ({ left, right, top, foot }) =>
          Math.abs(right - left - 1000 * widthM) < WITHIN_MM &&
          Math.abs(foot - top - 1000 * lengthM) < WITHIN_MM,
      );
      expect(isThere).toBe(true);
    }
  });
});

/** Trailing and leading mark of each fin, up from the tail by tape and to the reader's right, where LEFT lies; millimetres. */
function wantedMarks({ shape, finset }: Plan) {
  if (shape === null || finset === null) throw new Error("no fins");
  const { line, marks } = finset;
  const isStringer = line.atTailM === 0 && line.skewRad === 0;
  return marks.flatMap(({ trailing, leading }) =>
    [trailing, leading].map(({ at, fromTailTapeM }) => ({
      x: 1000 * at.yM,
      up: 1000 * (isStringer ? fromTailTapeM : tapeAt(shape.profile, at.xM)),
    })),
  );
}

function tapeAt(
  profile: ReadonlyArray<{ readonly fromTailM: number; readonly fromTailTapeM: number }>,
  straightM: number,
): number {
  const after = profile.findIndex(({ fromTailM }) => fromTailM >= straightM);
  const [low, high] = [profile[after - 1], profile[after]];
  if (low === undefined || high === undefined) throw new RangeError(`${straightM} m lies off the board`);
  const share = (straightM - low.fromTailM) / (high.fromTailM - low.fromTailM);
  return low.fromTailTapeM + share * (high.fromTailTapeM - low.fromTailTapeM);
}
