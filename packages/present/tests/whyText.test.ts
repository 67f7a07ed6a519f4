import { explain } from "@lapline/engine";
import { describe, expect, test } from "vitest";
import { formatWhyText } from "../src";
import { tellTold } from "../src/language/tellTold";
import { DEMO_PLANS } from "./demoPlans";

const EN = { units: "inch", language: "en" } as const;

describe("formatWhyText", () => {
  test.each(DEMO_PLANS)(
    "$id: shows value, words, formula, inputs and sources of a mark's toe",
    ({ board, plan }) => {
      const mark = plan.finset?.marks[0];
      const explanation = explain(board, plan, `finset.marks[${mark?.id}].toeRad`);
      if ("message" in explanation) throw new Error(explanation.message);
      const text = formatWhyText(explanation, [], EN);
      expect(text).toMatch(/^finset\.marks\[[a-z-]+\]\.toeRad = \d+\.\d+ deg\n/);
      expect(text).toContain("Formula: ");
      expect(text).toContain("\nFrom:\n");
      expect(text).toContain("\nSource:\n");
      for (const { name } of explanation.inputs)
        expect(text.replace(/\s+/g, " ")).toContain(tellTold(name, EN));
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
    const text = formatWhyText(explanation, [], EN);
    expect(text).toMatch(/N, nose tip along the line +\S.*\([\d.]+ mm\)/);
    const wide = explain(board, plan, "finset.verify.boxes[front-left].cutOut.widthM");
    if ("message" in wide) throw new Error(wide.message);
    expect(wide.inputs.find(({ name }) => tellTold(name, EN).startsWith("g,"))?.value).toMatchObject({
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
      [],
      EN,
    );
    expect(text).toBe(
      "a.b = yes\n\nBecause.\n\nFormula: a = b\n\nWhat would change it most:\n  - No quantity of the board file moves it by itself.\n",
    );
  });

  test("tells the three quantities that move a number most, and which way", () => {
    const [demo] = DEMO_PLANS;
    if (demo === undefined) throw new Error("no demo board");
    const explanation = explain(demo.board, demo.plan, "shape.volumeM3");
    if ("message" in explanation) throw new Error(explanation.message);
    const by = { dimension: "length", value: 0.001, grain: "fine" } as const;
    const moves = { dimension: "volume", value: 0.0002 } as const;
    const of = (path: string, change: number) => ({ path, by, change, moves });
    const influences = [
      of("survey.stations[4].thickness", 0.0002),
      of("fins.set[1].box.depth", -0.0002),
      of("glass.bottom.lap", 0.0002),
      of("survey.length", 0.0001),
    ];
    const text = formatWhyText(explanation, influences, { units: "mm", language: "en" });
    const [, told = ""] = text.split("What would change it most:\n");
    expect(told.split("\n").filter((line) => line.startsWith("  - "))).toEqual([
      "  - station 5, thickness: 1.0 mm more makes it 200 mL more.",
      "  - depth of the box, fin 2 of the set: 1.0 mm more makes it 200 mL less.",
      "  - lap on the bottom: 1.0 mm more makes it 200 mL more.",
    ]);
  });
});
