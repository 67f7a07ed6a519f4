import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { type Plan, planBuild } from "@lapline/engine";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { runHere } from "./runHere";

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "lapline-command-"));
  for (const { id, text } of DEMO_BOARDS) await writeFile(join(folder, `${id}.json`), text);
});
afterAll(() => rm(folder, { recursive: true }));

function planOf(text: string): Plan {
  const read = readBoardFile(text);
  if (!read.ok) throw new Error("the demo board cannot be read");
  return planBuild(read.board);
}

const hasBlocker = (plan: Plan) => plan.findings.some(({ severity }) => severity === "blocker");

describe.each(DEMO_BOARDS.map(({ id, text }) => ({ id, text, plan: planOf(text) })))(
  "the demo board $id",
  (demo) => {
    const file = () => join(folder, `${demo.id}.json`);
    const code = hasBlocker(demo.plan) ? 1 : 0;

    test("has a plan to work from", async () => {
      const result = await runHere(["plan", file()]);
      expect(result).toMatchObject({ code, err: "" });
      expect(result.out).toContain(demo.plan.name);
      expect(result.out).not.toMatch(/NaN|undefined|\[object|Infinity/);
    });

    test("has the engine's plan as JSON, from a file and from standard input", async () => {
      const fromFile = await runHere(["plan", file(), "--json"]);
      const fromInput = await runHere(["plan", "-", "--json"], demo.text);
      expect(fromFile).toMatchObject({ code, err: "" });
      expect(JSON.parse(fromFile.out)).toEqual(JSON.parse(JSON.stringify(demo.plan)));
      expect(fromInput).toEqual(fromFile);
    });

    test("has a line for each finding", async () => {
      const result = await runHere(["check", file()]);
      expect(result).toMatchObject({ code, err: "" });
      const lines = result.out.split("\n");
      for (const { path } of demo.plan.findings) expect(lines.some((line) => line.includes(path))).toBe(true);
    });

    test("says why a fin stands where it does", async () => {
      const mark = demo.plan.finset?.marks[0];
      const result = await runHere(["why", file(), `finset.marks[${mark?.id}].toeRad`]);
      expect(result).toMatchObject({ code: 0, err: expect.stringMatching(/^Not for water: /) });
      expect(result.out.split("\n").length).toBeGreaterThan(3);
    });
  },
);

describe("units", () => {
  const file = () => join(folder, `${DEMO_BOARDS[0]?.id}.json`);

  test("are inches, or millimetres where asked for", async () => {
    const [inch, asked, mm] = await Promise.all([
      runHere(["plan", file()]),
      runHere(["plan", file(), "--units", "inch"]),
      runHere(["plan", file(), "--units", "mm"]),
    ]);
    expect(inch.out).toBe(asked.out);
    expect(mm.out).toMatch(/\d mm\b/);
    expect(mm.out).not.toBe(inch.out);
  });

  test("are not guessed", async () => {
    const result = await runHere(["plan", file(), "--units", "inches"]);
    expect(result).toMatchObject({ code: 2, out: "" });
    expect(result.err).toContain("--units is inch or mm");
  });
});
