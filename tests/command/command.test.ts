import { mkdtemp, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { planBuild } from "@lapline/engine";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildFirst } from "../buildFirst";
import { runLapline, startLapline } from "./runLapline";

const [DEMO] = DEMO_BOARDS;
if (DEMO === undefined) throw new Error("there is no demo board");

let folder: string;
beforeAll(async () => {
  buildFirst("cli");
  folder = await mkdtemp(join(tmpdir(), "lapline-command-"));
  await writeFile(join(folder, "board.json"), DEMO.text);
});
afterAll(() => rm(folder, { recursive: true }));

describe("the command as a person starts it", () => {
  test("prints the engine's plan, from a file and from standard input", async () => {
    const read = readBoardFile(DEMO.text);
    if (!read.ok) throw new Error("the demo board cannot be read");
    const plan = planBuild(read.board);
    const fromFile = await runLapline(["plan", "board.json", "--json"], folder);
    const fromInput = await runLapline(["plan", "-", "--json"], folder, DEMO.text);
    expect(fromFile.err).toBe("");
    expect(fromFile.code).toBe(plan.findings.some(({ severity }) => severity === "blocker") ? 1 : 0);
    expect(JSON.parse(fromFile.out)).toEqual(JSON.parse(JSON.stringify(plan)));
    expect(fromInput).toEqual(fromFile);
  });

  test("refuses with 2, a message on standard error and nothing written", async () => {
    const { code, out, err } = await runLapline(["plan", "-"], folder, " ".repeat(10_000_000));
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toContain("too large");
    expect(await readdir(folder)).toEqual(["board.json"]);
  });

  test("does not mind a reader that stops early", async () => {
    const child = startLapline(["plan", "board.json", "--json"], folder);
    const messages: Buffer[] = [];
    child.stderr.on("data", (part: Buffer) => messages.push(part));
    child.stdout.once("data", () => child.stdout.destroy());
    await new Promise((resolve) => child.on("close", resolve));
    expect(Buffer.concat(messages).toString("utf8")).toBe("");
  });
});
