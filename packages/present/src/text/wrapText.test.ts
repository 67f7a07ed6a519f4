import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { PAGE_WIDTH, wrapText } from "./wrapText";

describe("wrapText", () => {
  test("breaks between words and hangs what follows", () => {
    expect(wrapText("one two three", { width: 9, indent: 2, hanging: 4 })).toEqual([
      "  one two",
      "    three",
    ]);
  });

  test("does not break a mixed number", () => {
    expect(wrapText(`hold 4'10 13/16" or 12 in`, { width: 12 })).toEqual(["hold", `4'10 13/16"`, "or 12 in"]);
    expect(wrapText(`left 12 31/32 in`, { width: 10 })).toEqual(["left", "12 31/32", "in"]);
  });

  test("keeps every letter and no line too long, whatever the text", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 400 }), (text) => {
        const lines = wrapText(`x${text}`, { indent: 2, hanging: 6 });
        expect(lines.every((line) => line.length <= PAGE_WIDTH)).toBe(true);
        expect(lines.join("").replace(/\s/g, "")).toBe(`x${text}`.replace(/\s/g, ""));
      }),
      { seed: 77, numRuns: 300 },
    );
  });

  test("writes signs in plain letters before it counts them", () => {
    expect(wrapText("6.0°, 85 µm, 0.7 m², 20 °C")).toEqual(["6.0 deg, 85 um, 0.7 m2, 20 C"]);
  });
});
