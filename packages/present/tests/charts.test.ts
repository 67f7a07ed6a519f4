import { describe, expect, test } from "vitest";
import { filmBarsChart } from "../src/charts/filmBarsChart";
import { gelOverTemperatureChart } from "../src/charts/gelOverTemperatureChart";
import { readingsAlong } from "../src/charts/readingsAlong";
import { readingsChart } from "../src/charts/readingsChart";
import type { Item } from "../src/drawing/Drawing";
import { sandRows } from "../src/words/sandWords";
import { DEMO_PLANS } from "./demoPlans";

const reader = { units: "mm", language: "en" } as const;
const NEAR_MM = 0.01;

/** The corners of all lines of a layer, in their order. */
const cornersOf = (items: readonly Item[]) =>
  items.flatMap((item) => (item.kind === "polyline" || item.kind === "hatch" ? item.points : []));

const itemsOf = (drawing: ReturnType<typeof filmBarsChart>, id: string): readonly Item[] =>
  drawing?.layers.find((layer) => layer.id === id)?.items ?? [];

describe.each(DEMO_PLANS)("charts of $id", ({ plan }) => {
  test.each(["thickness", "rocker"] as const)(
    "%s: every cross stands off its curve by its residual",
    (kind) => {
      const { shape } = plan;
      const drawing = readingsChart(plan, kind, { reader, widthMm: 200 });
      if (shape === null || drawing === null) throw new Error("the demo has a shape");
      const { origin, alongMmPerM, acrossMmPerM } = drawing.frame;
      const times = Number(/drawn (\d+) times/.exec(drawing.notes.join(" "))?.[1]);
      const lines = itemsOf(drawing, "crosses").filter((item) => item.kind === "line" && item.pen === "thin");
      const readings = shape.readings
        .filter(({ path }) => path.endsWith(`.${kind}`))
        .toSorted((a, b) => a.fromTailM - b.fromTailM);
      expect(lines).toHaveLength(readings.length);
      readings.forEach(({ fromTailM, readM, residualM }, i) => {
        const line = lines[i];
        if (line?.kind !== "line") throw new Error("a line for each reading");
        expect(Math.abs(line.to.x - (origin.x + fromTailM * alongMmPerM.x))).toBeLessThan(NEAR_MM);
        expect(Math.abs(line.from.y - (origin.y + (readM - residualM) * acrossMmPerM.y))).toBeLessThan(
          NEAR_MM,
        );
        expect(Math.abs(line.to.y - line.from.y - times * residualM * acrossMmPerM.y)).toBeLessThan(NEAR_MM);
      });
      expect(readingsAlong(shape, kind).map(({ fittedM, residualM }) => fittedM + residualM)).toEqual(
        readings.map(({ readM }) => expect.closeTo(readM, 12)),
      );
    },
  );

  test("film: bars are as long as the film, what papers take, and what is left", () => {
    const drawing = filmBarsChart(plan, { reader, widthMm: 200 });
    if (drawing === null || plan.sanding === null) throw new Error("the demo has a film budget");
    const { origin, alongMmPerM } = drawing.frame;
    const at = (filmM: number): number => origin.x + filmM * alongMmPerM.x;
    const edges = itemsOf(drawing, "bars").flatMap((item) => (item.kind === "polyline" ? [item.points] : []));
    let next = 0;
    for (const zone of sandRows(plan.sanding.zones)) {
      expect(Math.abs((edges[next]?.[1]?.x ?? 0) - at(zone.filmM))).toBeLessThan(NEAR_MM);
      for (const { takenM } of zone.ledger) {
        const [from, to] = edges[next++] ?? [];
        expect(Math.abs((to?.x ?? 0) - (from?.x ?? 0) - takenM * alongMmPerM.x)).toBeLessThan(NEAR_MM);
      }
      expect(Math.abs((edges[next - 1]?.[0]?.x ?? 0) - at(zone.remainingM))).toBeLessThan(NEAR_MM);
      if (zone.remainingM > 0) {
        expect(Math.abs((edges[next++]?.[1]?.x ?? 0) - at(zone.remainingM))).toBeLessThan(NEAR_MM);
      }
    }
    expect(next).toBe(edges.length);
  });

  test("gel over temperature: a straight axis, even factors upwards, and the planned cup inside its band", () => {
    const { mix } = plan;
    if (mix === null) throw new Error("the demo has cups");
    for (const coat of mix.coats) {
      const drawing = gelOverTemperatureChart(coat, mix, { reader, widthMm: 120 });
      if (drawing === null || coat.clock === null) throw new Error(`${coat.id} has a band`);
      const lines = itemsOf(drawing, "band").flatMap((item) =>
        item.kind === "polyline" ? [item.points] : [],
      );
      const { gelBand, clock, resinTemperatureK } = coat;
      const [low, high, middle] = lines;
      if (low === undefined || high === undefined || middle === undefined) throw new Error("three lines");
      const [first, last] = [gelBand[0]!, gelBand.at(-1)!];
      const mmPerK = (low.at(-1)!.x - low[0]!.x) / (last.temperatureK - first.temperatureK);
      const mmPerLog = (low.at(-1)!.y - low[0]!.y) / Math.log(last.gelLowS / first.gelLowS);
      const xOf = (temperatureK: number) => low[0]!.x + (temperatureK - first.temperatureK) * mmPerK;
      const yOf = (timeS: number) => low[0]!.y + Math.log(timeS / first.gelLowS) * mmPerLog;
      gelBand.forEach((at, i) => {
        for (const [line, timeS] of [
          [low, at.gelLowS],
          [middle, at.gelS],
          [high, at.gelHighS],
        ] as const) {
          expect(Math.abs(line[i]!.x - xOf(at.temperatureK))).toBeLessThan(NEAR_MM);
          expect(Math.abs(line[i]!.y - yOf(timeS))).toBeLessThan(NEAR_MM);
        }
      });
      const [upright] = itemsOf(drawing, "cup");
      if (upright?.kind !== "line") throw new Error("the cup's own band stands upright");
      expect(Math.abs(upright.from.x - xOf(resinTemperatureK))).toBeLessThan(NEAR_MM);
      expect(Math.abs(upright.from.y - yOf(clock.potGelLowS))).toBeLessThan(NEAR_MM);
      expect(Math.abs(upright.to.y - yOf(clock.potGelHighS))).toBeLessThan(NEAR_MM);
      for (const { x, y } of cornersOf(drawing.layers.flatMap(({ items }) => items))) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(drawing.widthMm);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual(drawing.heightMm);
      }
    }
  });
});
