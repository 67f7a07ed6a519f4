import { expect, it } from "vitest";
import { computeBand } from "./computeBand";

it("sums independent moves in squares", () => {
  const band = computeBand(
    { a: { value: 10, low: 7, high: 13 }, b: { value: 20, low: 16, high: 24 } },
    ({ a, b }) => a + b,
  );
  expect(band).toEqual({ value: 30, low: 25, high: 35 });
});

it("keeps a lopsided driver lopsided and a falling one turned round", () => {
  const band = computeBand({ a: { value: 1, low: 0.75, high: 1.1 } }, ({ a }) => -a);
  expect(band.low).toBeCloseTo(-1.1, 12);
  expect(band.high).toBeCloseTo(-0.75, 12);
});

it("holds still without a range", () => {
  const band = computeBand({ a: { value: 2, source: "convention" } }, ({ a }) => a ** 2);
  expect(band).toEqual({ value: 4, low: 4, high: 4 });
});
