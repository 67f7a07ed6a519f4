import { mkdir, mkdtemp, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DEMO_BOARDS } from "@lapline/contract";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { runHere } from "./runHere";

const [DEMO] = DEMO_BOARDS;
if (DEMO === undefined) throw new Error("there is no demo board");

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "lapline-refused-"));
  await writeFile(join(folder, "board.json"), DEMO.text);
  await mkdir(join(folder, "a-folder"));
});
afterAll(() => rm(folder, { recursive: true }));

/** Runs the command and holds that it refused, printed no result and wrote nothing. */
async function refusal(args: readonly string[], input: string | Uint8Array = ""): Promise<string> {
  const before = await readdir(folder, { recursive: true });
  const named = args.map((word) =>
    word.includes(".json") || word === "a-folder" ? join(folder, word) : word,
  );
  const { code, out, err } = await runHere(named, input);
  expect({ code, out }).toEqual({ code: 2, out: "" });
  expect(await readdir(folder, { recursive: true })).toEqual(before);
  expect(err).not.toMatch(/\n\s+at /);
  return err;
}

/** The demo board with the part at `a.b.c` exchanged, or taken out where there is no new one. */
function changed(path: string, value?: unknown): string {
  const file: unknown = JSON.parse(DEMO?.text ?? "");
  const steps = path.split(".");
  const last = steps.pop() ?? "";
  const parent = steps.reduce<unknown>((at, step) => Reflect.get(Object(at), step), file);
  if (value === undefined) Reflect.deleteProperty(Object(parent), last);
  else Reflect.set(Object(parent), last, value);
  return JSON.stringify(file);
}

describe("words that are not understood", () => {
  test.each([
    [[], "lapline plan FILE"],
    [["pln", "board.json"], "Did you mean plan?"],
    [["paste", "board.json"], 'no command "paste"'],
    [["sheet", "board.json"], "needs -o OUT.pdf"],
    [["plan"], "needs FILE"],
    [["plan", "board.json", "again.json"], "one word too many"],
    [["plan", "board.json", "--jsno"], "Did you mean --json?"],
    [["why", "board.json"], "needs PATH"],
    [["serve", "--port", "70000"], "from 0 (any free one) to 65535"],
    [["serve", "--prot", "1"], "Did you mean --port?"],
    [["demo"], "needs DIR"],
  ])("%j", async (args, reason) => {
    expect(await refusal(args)).toContain(reason);
  });
});

describe("files that cannot be read", () => {
  test.each([
    ["gone.json", "there is no such file"],
    ["a-folder", "it is a folder"],
    ["board.json/board.json", "there is no such file"],
  ])("%s", async (file, reason) => {
    expect(await refusal(["plan", file])).toContain(reason);
  });

  test.each([
    ["empty", "", "standard input"],
    ["of 10 MB", " ".repeat(10_000_000), "too large"],
    ["no text", Buffer.from([0x7b, 0xff, 0xfe]), "not text"],
    ["nested without end", "[".repeat(100_000), "standard input"],
    ["broken off", DEMO.text.slice(0, 300), "standard input"],
    ["with NaN", '{"format": NaN}', "standard input"],
  ])("what is %s", async (_, input, reason) => {
    expect(await refusal(["plan", "-"], input)).toContain(reason);
  });
});

describe("board files that are wrong", () => {
  test.each([
    ["a bare number", changed("survey.length", 72), /survey\.length/],
    ["a field that is a slip", changed("fins.arangement", "quad"), /arrangement/],
    ["a length that is none", changed("survey.length", "six foot"), /survey\.length/],
    ["a wrong type", changed("survey.stations", "none"), /survey\.stations/],
    ["no nose", changed("survey.nose"), /survey\.nose/],
    ["a board of another kind", changed("format", "lapline-board/9"), /lapline-board\/1/],
  ])("%s", async (_, input, reason) => {
    for (const args of [
      ["plan", "-"],
      ["check", "-"],
      ["why", "-", "shape.volumeM3"],
    ]) {
      expect(await refusal(args, input)).toMatch(reason);
    }
  });

  test("a path of no number, with what there is", async () => {
    expect(await refusal(["why", "board.json", "shape.volumM3"])).toMatch(/shape\.volumM3.*\bvolumeM3/);
  });
});

test("too few stations are a blocker that names the readings to take", async () => {
  const stations = [{ fromTail: "12 in", left: "7 in", right: "7 in", thickness: "2 in", rocker: "1 in" }];
  const input = changed("survey.stations", stations);
  const { code, out, err } = await runHere(["plan", "-", "--json"], input);
  expect({ code, err }).toEqual({ code: 1, err: "" });
  const plan = JSON.parse(out);
  expect(plan.shape).toBeNull();
  const blockers = plan.findings.filter(({ severity }: { severity: string }) => severity === "blocker");
  expect(blockers.map(({ text }: { text: string }) => text).join("\n")).toMatch(/station/);
});
