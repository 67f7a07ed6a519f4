import { DEMO_BOARDS } from "@lapline/contract";
import { expect, test } from "vitest";
import { planOf } from "../plan/planOf";
import { fieldName } from "./fieldName";

const read = planOf(DEMO_BOARDS[0]?.text ?? "");
if (!read.ok) throw new Error("the demo board cannot be read");
const strings = [{ fin: "front", side: "left" as const, besideNose: "76" }];
const file = { ...read.file, fins: { ...read.file.fins!, verify: { strings } } };

const READER = { units: "mm", language: "en" } as const;

test("a field goes by the words that stand at it", () => {
  const [first] = file.fins.set;
  expect(fieldName(file, "survey.stations[4].left", READER)).toBe("station 5, left");
  expect(fieldName(file, "survey.length", READER)).toBe("length");
  expect(fieldName(file, "fins.set[0].cant", READER)).toBe(`${first?.fin}: cant`);
  expect(fieldName(file, "fins.set[0].toe.aimBesideNose", READER)).toBe(
    `${first?.fin}: toe, aim beside nose`,
  );
  expect(fieldName(file, "fins.verify.strings[0].besideNose", READER)).toBe(
    "strings, front left: beside nose",
  );
});
