import { describe, expect, test } from "vitest";
import { splitFractions } from "./splitFractions";

describe("splitFractions", () => {
  test("takes the fraction out of a mixed number and leaves the rest", () => {
    expect(splitFractions("11 3/16 in")).toEqual([
      { text: "11 ", isFraction: false },
      { text: "3/16", isFraction: true },
      { text: " in", isFraction: false },
    ]);
  });

  test("puts every text together again as it was", () => {
    for (const text of ["", "5'10\"", "1/2", "9'1 9/16\" straight, 9'2\" by tape", "a/b"]) {
      expect(
        splitFractions(text)
          .map((part) => part.text)
          .join(""),
      ).toBe(text);
    }
  });
});
