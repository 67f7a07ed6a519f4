import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatLength } from "../../src/foundation/formatLength";
import { formatQuantity } from "../../src/foundation/formatQuantity";
import { parseQuantity } from "../../src/foundation/parseQuantity";
import type { Dimension, Quantity } from "../../src/foundation/quantity";

const RUNS = { seed: 20260411, numRuns: 1000 };
const DIMENSIONS: readonly Dimension[] = [
  "length",
  "area",
  "volume",
  "mass",
  "arealMass",
  "density",
  "temperature",
  "angle",
  "duration",
  "fraction",
  "count",
];
const lengthsM = fc.double({ min: -6, max: 6, noNaN: true });
/** A double near 6 m is known to about 1e-15 m; the text must not add to it. */
const ROUND_OFF_M = 1e-12;

function parsed(text: string, dimension: Dimension): number {
  const result = parseQuantity(text, dimension);
  if (!result.ok) throw new Error(result.message);
  return result.value;
}

describe("a length as text", () => {
  it.each([8, 16, 32] as const)("comes back within half of 1/%i in", (denominator) => {
    fc.assert(
      fc.property(lengthsM, (valueM) => {
        const back = parsed(formatLength(valueM, { units: "inch", denominator }), "length");
        return Math.abs(back - valueM) <= 0.0254 / denominator / 2 + ROUND_OFF_M;
      }),
      RUNS,
    );
  });

  it.each([
    [8, 0.0005],
    [16, 0.0005],
    [32, 0.00005],
  ] as const)("comes back from millimetres (%i) within %d m", (denominator, halfM) => {
    fc.assert(
      fc.property(lengthsM, (valueM) => {
        const back = parsed(formatLength(valueM, { units: "mm", denominator }), "length");
        return Math.abs(back - valueM) <= halfM + ROUND_OFF_M;
      }),
      RUNS,
    );
  });

  it("never shows a negative nought", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.0005, max: 0.0005, noNaN: true }),
        fc.constantFrom("inch", "mm"),
        (valueM, units) => {
          const text = formatLength(valueM, { units, denominator: 16 });
          return !/^-0(\.0+)? /.test(text);
        },
      ),
      RUNS,
    );
  });
});

describe("any quantity as text", () => {
  const ranges: Readonly<Record<Dimension, readonly [number, number, number]>> = {
    // Largest relative or absolute loss of the text: half of its last digit.
    length: [0, 6, 0.001],
    area: [0, 4, 0.051],
    volume: [0, 0.1, 0.5e-3],
    mass: [0, 12, 0.05],
    arealMass: [0, 1, 0.017],
    density: [0, 200, 0.81],
    temperature: [250, 330, 0.51],
    angle: [-1.5, 1.5, 0.0088],
    duration: [0, 1e6, 1800],
    flow: [0, 2, 2.4e-4],
    fraction: [0, 1, 0.0051],
    count: [0, 100, 0.0051],
  };

  it.each(DIMENSIONS)("%s comes back within half of the last digit shown", (dimension) => {
    const [min, max, loss] = ranges[dimension];
    const values = fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        values,
        fc.constantFrom("coarse", "normal", "fine"),
        fc.constantFrom("inch", "mm"),
        (value, grain, units) => {
          const text = formatQuantity({ dimension, value, grain } as Quantity, units);
          // What stands in brackets is the same value once more.
          const back = parsed(text.replace(/ \(.*\)$/, ""), dimension);
          const isWhole = dimension === "count" && grain === "coarse";
          const most = dimension === "length" ? 0.0254 / 16 + ROUND_OFF_M : isWhole ? 0.5 : loss;
          return Math.abs(back - value) <= most;
        },
      ),
      RUNS,
    );
  });
});

describe("malformed text", () => {
  const alphabet = fc.constantFrom(..."0123456789 .,/-+'\"½⅛⁄′″−inftmcmkgCF°%zyd2³²eE\t\u0000\u202eé😀(");
  const nearMisses = fc.array(alphabet, { maxLength: 24 }).map((parts) => parts.join(""));
  const anything = fc.oneof(
    nearMisses,
    fc.string({ maxLength: 200 }),
    fc.string({ unit: "binary", maxLength: 60 }),
  );

  it.each(DIMENSIONS)("%s: never throws, and says what is wrong and where", (dimension) => {
    fc.assert(
      fc.property(anything, (text) => {
        const result = parseQuantity(text, dimension);
        if (result.ok) {
          if (!Number.isFinite(result.value) || Object.is(result.value, -0))
            expect({ text, result }).toBe("a finite number");
          return;
        }
        const isHarmless = !Array.from(result.message).some((character) => character < " ");
        const isInText =
          Number.isInteger(result.position) && result.position >= 0 && result.position <= text.length;
        const size = result.message.length;
        if (!(isHarmless && isInText && size > 10 && size < 400))
          expect({ text, result }).toBe("a message and a position");
      }),
      RUNS,
    );
  });

  it("is refused by its length before it is read", () => {
    const result = parseQuantity("1".repeat(5_000_000), "length");
    expect(result).toMatchObject({ ok: false, position: 80 });
  });
});
