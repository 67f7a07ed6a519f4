import { expect, test } from "vitest";
import { whoseWords } from "./whoseWords";

/** Every letter as wide as every other. */
const measure = (text: string) => [...text].length;

test("a long name gives way to the serial", () => {
  const whose = { name: "a board for the second winter", serial: "NS-041" };
  const words = whoseWords(whose, 20, measure);
  expect(words).toBe("a board fo… · NS-041");
  expect(measure(words)).toBe(20);
  expect(whoseWords(whose, 60, measure)).toBe("a board for the second winter · NS-041");
});

test("a board without a serial has its name alone", () => {
  expect(whoseWords({ name: "glider", serial: undefined }, 20, measure)).toBe("glider");
});
