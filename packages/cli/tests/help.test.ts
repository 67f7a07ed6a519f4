import { expect, test } from "vitest";
import { runHere } from "./runHere";

const COMMANDS = ["plan", "check", "why", "template", "mesh", "csv", "demo", "serve"];

test.each([["--help"], ...COMMANDS.map((name) => [name, "--help"])])(
  "the help of %s %s fits 80 columns",
  async (...args) => {
    const { code, out } = await runHere(args);
    expect(code).toBe(0);
    expect(out.split("\n").filter((line) => line.length > 80)).toEqual([]);
  },
);

test("the help names every command, and what each cannot do without", async () => {
  const { out } = await runHere(["--help"]);
  for (const name of COMMANDS) expect(out).toContain(`\n  lapline ${name}`);
  expect(out).toContain("lapline csv FILE --of survey|marks -o OUT.csv|.json\n");
});
