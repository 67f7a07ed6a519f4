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
