import { describe, expect, test } from "vitest";
import type { Command } from "./Command";
import { parseWords } from "./parseWords";

const COMMAND: Command = {
  name: "plan",
  needs: ["FILE"],
  says: "",
  options: { json: { says: "" }, units: { value: "inch|mm", says: "" } },
  run: async () => 0,
};
const parse = (...args: string[]) => parseWords(COMMAND, args);

describe("words behind a command", () => {
  test("may stand in any order", () => {
    const expected = { given: ["a.json"], options: { json: true, units: "mm" } };
    expect(parse("a.json", "--json", "--units", "mm")).toEqual(expected);
    expect(parse("--units=mm", "--json", "a.json")).toEqual(expected);
  });

  test("take - as standard input, and anything behind -- as it is", () => {
    expect(parse("-").given).toEqual(["-"]);
    expect(parse("--", "--json").given).toEqual(["--json"]);
  });

  test.each([
    [["a.json", "--jsn"], "Did you mean --json?"],
    [["a.json", "--unit=mm"], "Did you mean --units?"],
    [["a.json", "-x"], "has no option -x"],
    [["a.json", "--constructor"], "has no option --constructor"],
    [["a.json", "--units"], "--units needs a value: --units inch|mm"],
    [["a.json", "--units="], "--units needs a value"],
    [["a.json", "--units", "--json"], "--units needs a value"],
    [["a.json", "--json=yes"], "--json is a switch"],
    [["a.json", "b.json"], '"b.json" is one word too many'],
    [[], "needs FILE. Usage: lapline plan FILE"],
  ])("are refused as %j with the reason", (args, reason) => {
    expect(() => parse(...args)).toThrow(reason);
  });
});
