import { describe, expect, test } from "vitest";
import type { TextItem } from "../../src/drawing/Drawing";
import { buildTemplate } from "../../src/paper";
import { touches } from "../../src/paper/sheet/touches";
import { PAPER_BOARDS } from "./paperBoards";

const reader = { units: "inch", language: "en" } as const;

describe.each(PAPER_BOARDS)("the fin template of $id", ({ plan }) => {
  const template = buildTemplate(plan, { of: "fins", reader });
  const layers = template!.parts[0]!.drawing.layers;
  const textIn = (id: string, words: RegExp): TextItem | undefined =>
    layers
      .find((layer) => layer.id === id)!
      .items.find((item): item is TextItem => item.kind === "text" && words.test(item.text));

  test("the names of the stringer and of the best-fit line stand apart", () => {
    const stringer = textIn("stringer", /stringer line/)!;
    const fit = textIn("best-fit", /best-fit line/);
    // Upright texts: each takes its em to the left of its foot.
    if (fit !== undefined) expect(Math.abs(fit.at.x - stringer.at.x)).toBeGreaterThan(stringer.sizeMm + 1);
  });

  test("no diagonal runs through the leash plug's words", () => {
    const words = textIn("leash-plug", /leash plug/);
    if (words === undefined) return;
    const rect = {
      x: words.anchor === "start" ? words.at.x : words.at.x - 26,
      y: words.at.y - words.sizeMm,
      widthMm: 26,
      heightMm: 2 * words.sizeMm,
    };
    const diagonals = layers.find(({ id }) => id === "diagonals")!.items;
    expect(diagonals.filter((item) => touches(item, rect))).toEqual([]);
  });
});
