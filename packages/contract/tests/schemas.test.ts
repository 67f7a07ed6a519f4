import { readFileSync } from "node:fs";
import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { buildJsonSchemas } from "../src/buildJsonSchemas";
import { DEMO_BOARDS } from "../src/demoBoards";
import { readBoardFile } from "../src/readBoardFile";
import { editDemo } from "./editDemo";
import cases from "./reference/bad-input.json";

const committed = (fileName: string): string =>
  readFileSync(new URL(`../schemas/${fileName}`, import.meta.url), "utf8");

function compile(fileName: string): ValidateFunction {
  const ajv = new Ajv2020({ strict: true, strictRequired: false, allErrors: true });
  return ajv.compile(JSON.parse(committed(fileName)) as object);
}

describe("the committed JSON Schemas", () => {
  it.each(buildJsonSchemas().map(({ fileName, text }) => ({ fileName, text })))(
    "$fileName is what `npm run schemas` writes",
    ({ fileName, text }) => {
      expect(committed(fileName)).toBe(text);
    },
  );

  it.each(["lapline-board-1.schema.json", "lapline-plan-1.schema.json"])(
    "%s is a schema of draft 2020-12",
    (fileName) => {
      expect(() => compile(fileName)).not.toThrow();
      expect(JSON.parse(committed(fileName))).toMatchObject({
        $schema: "https://json-schema.org/draft/2020-12/schema",
      });
    },
  );
});

/** What only the reader can tell: units, ranges and what holds between fields. JSON Schema says nothing of these. */
const BEYOND_A_SCHEMA =
  /no unit|most taken|least taken|negative|unit of|a number was expected|characters are too many|outside the board|read without|leave "width"|same place|larger of the two|thicker than|say where|stands twice|earlier entry|no such day|later than|a fin of the set|another fin/;

describe("the board schema beside the reader", () => {
  const isValid = compile("lapline-board-1.schema.json");

  it.each(DEMO_BOARDS.map(({ id, file }) => ({ id, file })))("accepts the demo board $id", ({ file }) => {
    expect(isValid(file), JSON.stringify(isValid.errors)).toBe(true);
  });

  it.each(cases.edits)("both refuse $what, where its structure is wrong", ({ at, set }) => {
    const document = editDemo(at, set);
    const read = readBoardFile(JSON.stringify(document));
    const problems = read.ok ? [] : read.problems;
    const isStructural = problems.some(({ message }) => !BEYOND_A_SCHEMA.test(message));
    if (isStructural) expect(isValid(document)).toBe(false);
    else expect(problems.length).toBeGreaterThan(0);
  });

  it("tells most of the cases by itself", () => {
    const told = cases.edits.filter(({ at, set }) => !isValid(editDemo(at, set)));
    expect(told.length / cases.edits.length).toBeGreaterThan(0.6);
  });
});
