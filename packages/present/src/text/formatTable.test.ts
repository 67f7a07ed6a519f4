import { describe, expect, test } from "vitest";
import { formatTable } from "./formatTable";

describe("formatTable", () => {
  test("lines words up on the left and figures on the right, heads at their foot", () => {
    const lines = formatTable(
      [
        { head: "fin", align: "left" },
        { head: "from tail", align: "right" },
      ],
      [
        ["front-left", "11 1/2"],
        ["centre", "6"],
      ],
      0,
    );
    expect(lines).toEqual([
      "              from",
      "fin           tail",
      "front-left  11 1/2",
      "centre           6",
    ]);
  });

  test("runs long words over several lines rather than past the page", () => {
    const name = "a-resin-with-a-very-long-name-that-somebody-typed-in-full-because-the-can-says-so-and-more";
    const lines = formatTable(
      [
        { head: "coat", align: "left" },
        { head: "mix", align: "right" },
      ],
      [[name, "308 g"]],
    );
    expect(lines.every((line) => line.length <= 80)).toBe(true);
    const cells = lines.slice(1).map((line) => line.replace("308 g", "").trim());
    expect(cells.join("")).toBe(name);
    expect(lines.filter((line) => line.includes("308 g"))).toHaveLength(1);
  });
});
