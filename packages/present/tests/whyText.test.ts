import { explain } from "@lapline/engine";
import { describe, expect, test } from "vitest";
import { formatWhyText } from "../src";
import { DEMO_PLANS } from "./demoPlans";

describe("formatWhyText", () => {
  test.each(DEMO_PLANS)(
    "$id: shows value, words, formula, inputs and sources of a mark's toe",
    ({ board, plan }) => {
      const mark = plan.finset?.marks[0];
      const explanation = explain(board, plan, `finset.marks[${mark?.id}].toeRad`);
      if ("message" in explanation) throw new Error(explanation.message);
      const text = formatWhyText(explanation, { units: "inch", language: "en" });
      expect(text).toMatch(/^finset\.marks\[[a-z-]+\]\.toeRad = \d+\.\d+ deg\n/);
      expect(text).toContain("Formula: ");
      expect(text).toContain("\nFrom:\n");
      expect(text).toContain("\nSource:\n");
      for (const { name } of explanation.inputs) expect(text.replace(/\s+/g, " ")).toContain(name);
      expect(text.split("\n").filter((line) => line.length > 80)).toEqual([]);
    },
  );

  test("shows for a fin what was taken for that number and no other, and lengths in both systems", () => {
    const [demo] = DEMO_PLANS;
    if (demo === undefined) throw new Error("no demo board");
    const { board, plan } = demo;
    const explanation = explain(board, plan, "finset.marks[front-left].toeRad");
    if ("message" in explanation) throw new Error(explanation.message);
    const paths = explanation.assumptions.map(({ path }) => path);
    expect(paths.length).toBeLessThan(8);
    for (const path of paths) expect(path).toMatch(/^(fins|survey)\./);
    expect(paths.filter((path) => /cant|box|leashPlug|tolerance|set\[1\]/.test(path))).toEqual([]);
    const text = formatWhyText(explanation, { units: "inch", language: "en" });
    expect(text).toMatch(/N, nose tip along the line +\S.*\([\d.]+ mm\)/);
    const wide = explain(board, plan, "finset.verify.boxes[front-left].cutOut.widthM");
    if ("message" in wide) throw new Error(wide.message);
    expect(wide.inputs.find(({ name }) => name.startsWith("g,"))?.value).toMatchObject({
      dimension: "length",
    });
  });

  test("says of a place in the board file that it is typed there", () => {
    const [demo] = DEMO_PLANS;
    if (demo === undefined) throw new Error("no demo board");
    expect(explain(demo.board, demo.plan, "fins.set[0].toe")).toMatchObject({
      message: expect.stringContaining("typed in the board file"),
    });
  });

  test("shows nothing under headings that have nothing", () => {
    const text = formatWhyText(
      {
        path: "a.b",
        value: "yes",
        words: "Because.",
        formula: "a = b",
        inputs: [],
        sources: [],
        assumptions: [],
        findings: [],
      },
      { units: "mm", language: "en" },
    );
    expect(text).toBe("a.b = yes\n\nBecause.\n\nFormula: a = b\n");
  });
});
