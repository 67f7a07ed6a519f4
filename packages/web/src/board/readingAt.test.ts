import { DEMO_BOARDS } from "@lapline/contract";
import { planDrawing } from "@lapline/present";
import { expect, test } from "vitest";
import { planOf } from "../plan/planOf";
import { placeOnBoard, readingAt } from "./readingAt";

const read = planOf(DEMO_BOARDS[0]?.text ?? "");
if (!read.ok) throw new Error("the demo board cannot be read");
const { plan } = read;
const reading = plan.shape?.readings.find(({ path }) => path === "survey.stations[4].left");
if (reading === undefined) throw new Error("the demo has a fifth station");

test("a touch near a tick is the reading of that side, and none where nothing was read", () => {
  const at = (leftM: number, off = 0) => readingAt(plan, { fromTailM: reading.fromTailM + off, leftM }, 0.02);
  expect(at(0.2)).toBe("survey.stations[4].left");
  expect(at(-0.2)).toBe("survey.stations[4].right");
  expect(at(0.2, 0.015)).toBe("survey.stations[4].left");
  expect(at(0.2, 0.03)).toBeNull();
});

test.each([
  { face: "deck", stands: true },
  { face: "bottom", stands: true },
  { face: "deck", stands: false },
  { face: "bottom", stands: false },
] as const)("the drawing's frame is followed back, $face up, standing: $stands", ({ face, stands }) => {
  const drawing = planDrawing(plan, { reader: { units: "mm", language: "en" }, face, stands, widthMm: 120 });
  if (drawing === null) throw new Error("the demo has a shape");
  const { origin, alongMmPerM, acrossMmPerM } = drawing.frame;
  const xMm = origin.x + 0.7 * alongMmPerM.x - 0.1 * acrossMmPerM.x;
  const yMm = origin.y + 0.7 * alongMmPerM.y - 0.1 * acrossMmPerM.y;
  const place = placeOnBoard(drawing, xMm, yMm);
  expect(place.fromTailM).toBeCloseTo(0.7, 9);
  expect(place.leftM).toBeCloseTo(-0.1, 9);
});
