import { readFileSync } from "node:fs";
import { type Plan, planBuild } from "@lapline/engine";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { DEMO_BOARDS } from "../src/demoBoards";
import { planSchema } from "../src/plan/planSchema";
import { boardFromFile } from "../src/si/boardFromFile";

const planOf = ({ file }: { readonly file: (typeof DEMO_BOARDS)[number]["file"] }): Plan =>
  planBuild(boardFromFile(file));
const demos = DEMO_BOARDS.map(({ id, file }) => ({ id, file }));
const schemaText = readFileSync(new URL("../schemas/lapline-plan-1.schema.json", import.meta.url), "utf8");

describe("the plan as JSON", () => {
  it.each(demos)("of $id has every field that the schema names, and no other", (demo) => {
    const json: unknown = JSON.parse(JSON.stringify(planOf(demo)));
    // The schema drops what it does not name, so nothing may be missing afterwards.
    expect(planSchema.parse(json)).toStrictEqual(json);
  });

  it.each(demos)("of $id fits the committed JSON Schema", (demo) => {
    const isValid = new Ajv2020({ strict: true, strictRequired: false }).compile(
      JSON.parse(schemaText) as object,
    );
    expect(isValid(JSON.parse(JSON.stringify(planOf(demo)))), JSON.stringify(isValid.errors)).toBe(true);
  });

  it("is refused by the schema without one of its fields", () => {
    const [demo] = demos;
    if (demo === undefined) throw new Error("there is no demo board");
    const { water, ...rest } = planOf(demo);
    expect(water.ready).toBe(false);
    expect(planSchema.safeParse(rest).success).toBe(false);
  });
});

describe("the demo boards' plans", () => {
  it.each(demos)("$id is held up by nothing", (demo) => {
    expect(planOf(demo).findings.filter(({ severity }) => severity === "blocker")).toEqual([]);
  });

  it("the misread half-width, and no other reading, is doubted", () => {
    const suspects = demos.flatMap((demo) => {
      const readings = planOf(demo).shape?.readings ?? [];
      return readings.filter(({ suspect }) => suspect).map(({ path }) => `${demo.id} ${path}`);
    });
    expect(suspects).toEqual(["nine-two-long survey.stations[3].right"]);
  });

  it("the tri's stringer is found skewed, its nose end to the left", () => {
    const tris = demos.filter(({ id }) => id === "six-four-tri").map(planOf);
    expect(tris).toHaveLength(1);
    for (const { shape } of tris) {
      expect(shape?.symmetry.worstM).toBeCloseTo(0.004, 3);
      expect(shape?.symmetry.centrelineSkewRad).toBeGreaterThan(0.001);
    }
  });
});
