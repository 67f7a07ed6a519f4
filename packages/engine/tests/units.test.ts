import { unit } from "mathjs";
import { describe, expect, it } from "vitest";
import { parseQuantity } from "../src/foundation/parseQuantity";
import type { Dimension } from "../src/foundation/quantity";
import reference from "./reference/foundation/units.json";

const si = (text: string, dimension: string): number => {
  const parsed = parseQuantity(text, dimension as Dimension);
  if (!parsed.ok) throw new Error(parsed.message);
  return parsed.value;
};
const relativeError = (value: number, truth: number): number => Math.abs(value / truth - 1);

describe("units against published factors and a general units library", () => {
  it.each(reference.cases)("$unit is the factor of NIST SP 811", (row) => {
    const exponent = Number(row.printed.split("e")[1]);
    const halfDigit = 0.5 * 10 ** (exponent - reference.tolerance.printedDigits + 1);
    const limit = row.isExact ? reference.tolerance.exact * row.si : halfDigit;
    expect(Math.abs(si(`1 ${row.unit}`, row.dimension) - row.si)).toBeLessThanOrEqual(limit);
  });

  it.each(reference.cases)("$unit is what mathjs has", (row) => {
    const truth = unit(1, row.mathjsUnit).toNumber(row.mathjsSi);
    expect(relativeError(si(`1 ${row.unit}`, row.dimension), truth)).toBeLessThanOrEqual(
      reference.tolerance.mathjs,
    );
  });

  it.each(reference.temperatures)("$text is $kelvin K", ({ text, kelvin }) => {
    expect(si(text, "temperature")).toBeCloseTo(kelvin, 10);
    const [number, scale] = text.split(" ");
    const truth = unit(Number(number), scale === "F" ? "degF" : "degC").toNumber("K");
    expect(si(text, "temperature")).toBeCloseTo(truth, 10);
  });

  it.each(reference.derived)("$text is $si in SI", (row) => {
    expect(Math.abs(si(row.text, row.dimension) - row.si)).toBeLessThanOrEqual(row.tolerance);
  });
});
