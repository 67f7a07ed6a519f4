import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { formatQuantity, length, type Plan, planBuild } from "@lapline/engine";
import { describe, expect, test } from "vitest";
import {
  cupDrawing,
  type Drawing,
  drawingToSvg,
  filmClockDrawing,
  finDrawing,
  gelPointsDrawing,
  planDrawing,
  profileDrawing,
  silhouetteDrawing,
  skinStrip,
} from "../src";
import { sidesAgree } from "../src/board/sidesAgree";
import type { Item } from "../src/drawing/Drawing";
import { layOutDimension } from "../src/drawing/layOutDimension";
import { boxAround, boxesMeet, boxOfText, type SheetBox } from "../src/drawing/SheetBox";
import { formatBareTapeLength, formatTapeLength } from "../src/words/formatTapeLength";
import { DEMO_PLANS } from "./demoPlans";
import { measureOnBoard, readPaths, readTexts } from "./readDrawing";

/** The rectangles of the texts that stand upright, or of a dimension's figure. */
function textBoxes(item: Item): readonly SheetBox[] {
  const parts: readonly Item[] = item.kind === "dimension" ? layOutDimension(item) : [item];
  return parts.flatMap((part) => (part.kind === "text" && !part.turnRad ? [boxOfText(part)] : []));
}

/** The figure for drawings on the screen: within 0.01 mm of the plan, on the board. */
const WITHIN_M = 0.00001;
const UNITS = ["inch", "mm"] as const;
const READER = { units: "mm", language: "en" } as const;

function svgOf(drawing: Drawing): string {
  return drawingToSvg(drawing, { title: "t", desc: "d" });
}

function present<T>(value: T | null | undefined): T {
  if (value === null || value === undefined) throw new Error("expected a value");
  return value;
}

describe.each(DEMO_PLANS)("$id", ({ plan }) => {
  const shape = present(plan.shape);
  const views = UNITS.flatMap((units) =>
    (["deck", "bottom"] as const).flatMap((face) =>
      [true, false].map((stands) => ({
        reader: { units, language: "en" } as const,
        face,
        stands,
        widthMm: stands ? 82 : 260,
      })),
    ),
  );

  test.each(views)(
    "plan view, $face, stands $stands, $reader.units: the edge is the plan's outline",
    (view) => {
      const drawing = present(planDrawing(plan, view));
      const [edge = []] = readPaths(svgOf(drawing), "outline", "pen-thick");
      const truth = [
        ...shape.outline.map(({ fromTailM, leftM }) => ({ fromTailM, leftM })),
        ...shape.outline.map(({ fromTailM, rightM }) => ({ fromTailM, leftM: -rightM })).reverse(),
      ];
      expect(edge).toHaveLength(truth.length);
      edge.forEach((point, i) => {
        const at = measureOnBoard(drawing, point);
        expect(Math.abs(at.fromTailM - (truth[i]?.fromTailM ?? 0))).toBeLessThan(WITHIN_M);
        expect(Math.abs(at.leftM - (truth[i]?.leftM ?? 0))).toBeLessThan(WITHIN_M);
      });
    },
  );

  test.each(views)(
    "plan view, $face, stands $stands, $reader.units: nothing leaves the sheet; figures are the plan's",
    (view) => {
      const drawing = present(planDrawing(plan, view));
      const svg = svgOf(drawing);
      expect(drawing.widthMm).toBeCloseTo(view.widthMm, 9);
      for (const layer of ["outline", "readings", "tape", "dimensions", "words"]) {
        for (const { x, y } of [...readPaths(svg, layer, "ink-soft").flat(), ...readTexts(svg, layer)]) {
          expect(x).toBeGreaterThanOrEqual(-0.01);
          expect(x).toBeLessThanOrEqual(drawing.widthMm + 0.01);
          expect(y).toBeGreaterThanOrEqual(-0.01);
          expect(y).toBeLessThanOrEqual(drawing.heightMm + 0.01);
        }
      }
      const figures = readTexts(svg, "dimensions").map(({ text }) => text);
      for (const widthM of [shape.widthMaxM, ...shape.widths.map((width) => width.widthM)])
        expect(figures).toContain(formatQuantity(length(widthM), view.reader.units));
      expect(figures.join()).toContain(formatQuantity(length(shape.lengthTapeM), view.reader.units));
      const readings = readTexts(svg, "readings").map(({ text }) => text);
      const read = shape.readings.filter(({ path }) => /\.(left|right)$/.test(path));
      expect(readings).toHaveLength(read.length);
      for (const { readM } of read) {
        expect(readings).toContain(formatQuantity(length(readM), view.reader.units).replace(/ (in|mm)$/, ""));
      }
    },
  );

  test.each(views)(
    "plan view, $face, stands $stands, $reader.units: no word or figure meets a fin",
    (view) => {
      const drawing = present(planDrawing(plan, view));
      const { origin, alongMmPerM: along, acrossMmPerM: across } = drawing.frame;
      const fins = present(plan.finset).marks.map((mark) =>
        boxAround(
          [mark.trailing.at, mark.leading.at, ...(mark.box?.corners ?? [])].map(({ xM, yM }) => ({
            x: origin.x + xM * along.x + yM * across.x,
            y: origin.y + xM * along.y + yM * across.y,
          })),
        ),
      );
      const texts = drawing.layers.flatMap(({ items }) => items.flatMap((item) => textBoxes(item)));
      const worst = present(drawing.layers.find(({ id }) => id === "worst")).items;
      expect(worst.some(({ kind }) => kind === "text")).toBe(Math.abs(shape.symmetry.worstM) >= 0.001);
      for (const text of texts) for (const fin of fins) expect(boxesMeet(text, fin)).toBe(false);
    },
  );

  test("plan view: left and right are where the words say, deck up and bottom up", () => {
    for (const face of ["deck", "bottom"] as const) {
      const drawing = present(
        planDrawing(plan, { reader: { units: "mm", language: "en" }, face, stands: true, widthMm: 90 }),
      );
      const words = readTexts(svgOf(drawing), "words");
      const left = present(words.find(({ text }) => text.startsWith("LEFT")));
      const right = present(words.find(({ text }) => text === "RIGHT"));
      expect(measureOnBoard(drawing, left).leftM).toBeGreaterThan(measureOnBoard(drawing, right).leftM);
      expect(left.x > right.x).toBe(face === "bottom");
    }
  });

  test("marking-out: every mark where the plan has it, LEFT at the reader's right, figures from the plan", () => {
    const finset = present(plan.finset);
    for (const units of UNITS) {
      const drawing = present(finDrawing(plan, { reader: { units, language: "en" }, widthMm: 130 }));
      const svg = svgOf(drawing);
      const bases = readPaths(svg, "fins", "pen-thick").map((path) =>
        path.map((point) => measureOnBoard(drawing, point)),
      );
      expect(bases).toHaveLength(finset.marks.length);
      finset.marks.forEach((mark, i) => {
        [mark.trailing.at, mark.leading.at].forEach((at, end) => {
          expect(Math.abs((bases[i]?.[end]?.fromTailM ?? 0) - at.xM)).toBeLessThan(WITHIN_M);
          expect(Math.abs((bases[i]?.[end]?.leftM ?? 0) - at.yM)).toBeLessThan(WITHIN_M);
        });
      });
      const words = readTexts(svg, "words");
      expect(present(words.find(({ text }) => text === "LEFT is here")).x).toBeGreaterThan(
        present(words.find(({ text }) => text === "RIGHT")).x,
      );
      expect(drawing.notes[0]).toBe("Bottom up, nose away: LEFT is on your right hand.");
      const fromTail = readTexts(svg, "dimensions").map(({ text }) => text);
      const fromLine = readTexts(svg, "across").map(({ text }) => text);
      const fromRail = readTexts(svg, "from-rail").map(({ text }) => text);
      const strings = readTexts(svg, "strings").map(({ text }) => text);
      for (const mark of finset.marks) {
        expect(fromTail).toContain(formatTapeLength(mark.trailing.fromTailTapeM, { units, language: "en" }));
        if (mark.side === "centre") continue;
        for (const end of [mark.trailing, mark.leading])
          expect(fromLine).toContain(formatBareTapeLength(end.fromCentrelineM, { units, language: "en" }));
        expect(strings).toContain(formatTapeLength(Math.abs(mark.aimBesideNoseM), { units, language: "en" }));
        if (!sidesAgree(finset) || mark.side === "left")
          expect(fromRail).toContain(
            formatBareTapeLength(mark.trailing.fromRailM, { units, language: "en" }),
          );
      }
    }
  });

  test("marking-out on a phone: the left half alone where both are alike, no words over one another, every mark in its place", () => {
    const finset = present(plan.finset);
    for (const units of UNITS) {
      const reader = { units, language: "en" } as const;
      const drawing = present(finDrawing(plan, { reader, widthMm: 72, mayShorten: true }));
      const svg = svgOf(drawing);
      const isHalf = sidesAgree(finset);
      expect(drawing.notes.some((note) => note.startsWith("Only the left half"))).toBe(isHalf);
      const shown = finset.marks.filter(({ side }) => !isHalf || side !== "right");
      const bases = readPaths(svg, "fins", "pen-thick");
      expect(bases).toHaveLength(shown.length);
      shown.forEach(({ trailing }, i) => {
        const at = measureOnBoard(drawing, present(bases[i]?.[0]));
        expect(Math.abs(at.fromTailM - trailing.at.xM)).toBeLessThan(WITHIN_M);
        expect(Math.abs(at.leftM - trailing.at.yM)).toBeLessThan(WITHIN_M);
      });
      const boxes = drawing.layers.flatMap(({ items }) => items.flatMap(textBoxes));
      expect(boxes.length).toBeGreaterThan(2);
      boxes.forEach((box, k) => {
        for (const other of boxes.slice(k + 1)) expect(boxesMeet(box, other)).toBe(false);
      });
    }
  });

  test("side view: bottom and deck are the plan's rocker and thickness, heights by the stated factor", () => {
    const drawing = present(profileDrawing(plan, { reader: { units: "mm", language: "en" }, widthMm: 260 }));
    const [edge = []] = readPaths(svgOf(drawing), "outline", "pen-thick");
    const truth = [
      ...shape.profile.map(({ fromTailM, rockerM }) => ({ fromTailM, upM: rockerM })),
      ...shape.profile
        .map(({ fromTailM, rockerM, thicknessM }) => ({ fromTailM, upM: rockerM + thicknessM }))
        .reverse(),
    ];
    edge.forEach((point, i) => {
      const at = measureOnBoard(drawing, point);
      expect(Math.abs(at.fromTailM - (truth[i]?.fromTailM ?? 0))).toBeLessThan(WITHIN_M);
      expect(Math.abs(at.leftM - (truth[i]?.upM ?? 0))).toBeLessThan(WITHIN_M);
    });
    const times = -drawing.frame.acrossMmPerM.y / drawing.frame.alongMmPerM.x;
    expect(drawing.notes.join(" ")).toContain(times > 1.01 ? `Heights drawn ${Math.round(times)} times` : "");
  });

  test("skin strip: each band as thick as the plan's layer, by the stated factor", () => {
    const drawing = present(skinStrip(plan, { reader: { units: "mm", language: "en" }, widthMm: 400 }));
    const [, times] = present(/drawn (\d+) times/.exec(drawing.notes.join(" ")));
    const bands = readPaths(svgOf(drawing), "skin", "hatch-cloth").map(
      (band) => (band[2]?.y ?? 0) - (band[0]?.y ?? 0),
    );
    const thicknesses = present(plan.layup).zones.map(
      (zone) => zone.laminateThicknessM * 1000 * Number(times),
    );
    for (const band of bands) expect(thicknesses.some((mm) => Math.abs(mm - band) < 0.001)).toBe(true);
    expect(bands.length).toBeGreaterThan(2);
  });

  test("skin strip: names and figures stand clear of each other and within the sheet, in both languages and on a phone", () => {
    for (const language of ["en", "de"] as const)
      for (const widthMm of [72, 120, 190, 340]) {
        const drawing = present(skinStrip(plan, { reader: { units: "inch", language }, widthMm }));
        const boxes = drawing.layers.flatMap(({ items }) => items.flatMap(textBoxes));
        expect(boxes.length).toBeGreaterThan(6);
        for (const box of boxes) {
          expect(box.left).toBeGreaterThanOrEqual(0);
          expect(box.right).toBeLessThanOrEqual(widthMm + 0.001);
          expect(box.top).toBeGreaterThanOrEqual(0);
          expect(box.bottom).toBeLessThanOrEqual(drawing.heightMm);
        }
        const meeting = boxes.filter((a, i) => boxes.slice(i + 1).some((b) => boxesMeet(a, b)));
        expect(meeting).toEqual([]);
      }
  });

  test("cups: the fills are to each other as the plan's masses", () => {
    const mix = present(plan.mix);
    const largestKg = Math.max(...mix.coats.flatMap((coat) => coat.cups.map((cup) => cup.mixedMassKg)));
    for (const coat of mix.coats) {
      const levels = readPaths(svgOf(cupDrawing(coat, mix)), "cups", "hatch-resin").map(
        (cup) => (cup[1]?.y ?? 0) - (cup[0]?.y ?? 0),
      );
      expect(levels).toHaveLength(coat.cups.length);
      coat.cups.forEach((cup, i) => {
        expect(levels[i]).toBeCloseTo((12 * cup.mixedMassKg) / largestKg, 3);
      });
    }
  });

  test("the film's clock: each stage's bar and mark stand where its times are, in even factors", () => {
    const mix = present(plan.mix);
    for (const coat of mix.coats) {
      const clock = present(coat.clock);
      const svg = svgOf(present(filmClockDrawing(clock, { reader: READER, widthMm: 150 })));
      const bars = readPaths(svg, "stages", "hatch-resin").map(([from, to]) => [from?.x ?? 0, to?.x ?? 0]);
      const stages = [
        "pullTape",
        "trimFrom",
        "trimUntil",
        "flip",
        "recoatFrom",
        "recoatUntil",
        "sandable",
        "full",
      ] as const;
      const bands = stages.flatMap((stage) => {
        const [low, about, high] = [clock[`${stage}LowS`], clock[`${stage}S`], clock[`${stage}HighS`]];
        if (about === null) return [];
        return [[Math.log(low ?? about), high === null ? null : Math.log(high)] as const];
      });
      expect(bars).toHaveLength(bands.length);
      const sorted = bands.toSorted(([a], [b]) => a - b);
      // Two early ends give the scale; a late end that is not known lies at the drawing's edge.
      const [first, last] = [bands.indexOf(present(sorted[0])), bands.indexOf(present(sorted.at(-1)))];
      const perFactor =
        ((bars[last]?.[0] ?? 0) - (bars[first]?.[0] ?? 0)) /
        (present(bands[last])[0] - present(bands[first])[0]);
      bars.forEach((bar, i) => {
        const [low, high] = present(bands[i]);
        if (high === null) expect(bar[1]).toBeCloseTo(149, 2);
        else expect((bar[1] ?? 0) - (bar[0] ?? 0)).toBeCloseTo(perFactor * (high - low), 2);
      });
    }
  });

  test("gel points: a warmer and slower one is crossed in red lead and told in words", () => {
    const point = (temperatureK: number, gelS: number, isOdd: boolean) => ({
      temperatureK,
      doseRatio: 0.01,
      gelS,
      fittedS: gelS,
      isOdd,
    });
    const points = [point(288, 4440, false), point(293, 2880, true), point(298, 3480, true)];
    const resin = { ...present(present(plan.mix).resins[0]), points };
    const svg = svgOf(present(gelPointsDrawing(resin, { reader: READER, widthMm: 120 })));
    expect(svg.match(/read it again/g)).toHaveLength(2);
    expect(gelPointsDrawing({ ...resin, points: [] }, { reader: READER, widthMm: 120 })).toBeNull();
  });
});

describe("what cannot be drawn", () => {
  const [demo] = DEMO_PLANS;
  const bare: Plan = { ...present(demo).plan, shape: null, finset: null, layup: null };
  test("is null, never an empty board", () => {
    expect(
      planDrawing(bare, {
        reader: { units: "mm", language: "en" },
        face: "deck",
        stands: false,
        widthMm: 200,
      }),
    ).toBeNull();
    expect(profileDrawing(bare, { reader: { units: "mm", language: "en" }, widthMm: 200 })).toBeNull();
    expect(finDrawing(bare, { reader: { units: "mm", language: "en" }, widthMm: 200 })).toBeNull();
    expect(skinStrip(bare, { reader: { units: "mm", language: "en" }, widthMm: 200 })).toBeNull();
    expect(silhouetteDrawing(bare, 60)).toBeNull();
  });
});

test("boards in the shed are drawn to one scale", () => {
  for (const { plan } of DEMO_PLANS) {
    const drawing = present(silhouetteDrawing(plan, 40));
    const [edge = []] = readPaths(svgOf(drawing), "outline", "pen-thick");
    const tall = Math.max(...edge.map(({ y }) => y)) - Math.min(...edge.map(({ y }) => y));
    expect(tall).toBeCloseTo(present(plan.shape).lengthM * 40, 3);
  }
});

test("a swallow tail is drawn with its notch, from the tips to the crotch that the plan has", () => {
  const [demo] = DEMO_BOARDS;
  const file = JSON.parse(present(demo).text);
  file.survey.tail = { kind: "swallow", width: "9 in", depth: "3 1/2 in" };
  const read = readBoardFile(JSON.stringify(file));
  if (!read.ok) throw new Error("the board cannot be read");
  const plan = planBuild(read.board);
  const crotchM = present(present(plan.shape).notch).depthM;
  const drawing = present(
    planDrawing(
      { ...plan, finset: null },
      { reader: { units: "mm", language: "en" }, face: "deck", stands: true, widthMm: 90 },
    ),
  );
  const [edge = []] = readPaths(svgOf(drawing), "outline", "pen-thick");
  const notch = measureOnBoard(drawing, present(edge.at(-1)));
  expect(notch.fromTailM).toBeCloseTo(crotchM, 5);
  expect(notch.leftM).toBeCloseTo(0, 5);
  const fins = present(finDrawing(plan, { reader: { units: "mm", language: "en" }, widthMm: 90 }));
  const [tail = []] = readPaths(svgOf(fins), "outline", "pen-thick");
  expect(tail.some((point) => Math.abs(measureOnBoard(fins, point).fromTailM - crotchM) < WITHIN_M)).toBe(
    true,
  );
});
