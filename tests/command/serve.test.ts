import { mkdtemp, readdir, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { DEMO_BOARDS } from "@lapline/contract";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildFirst } from "../buildFirst";
import { runLapline, startLapline } from "./runLapline";

let folder: string;
beforeAll(async () => {
  buildFirst("cli", "web");
  folder = await mkdtemp(join(tmpdir(), "lapline-serve-"));
});
afterAll(() => rm(folder, { recursive: true }));

/** Starts `lapline serve` and waits for the line with its address. */
async function serve(...args: string[]) {
  const child = startLapline(["serve", ...args], folder);
  const ended = new Promise<number | null>((resolve) => child.on("close", resolve));
  const lines = createInterface({ input: child.stdout });
  const address = await new Promise<string>((resolve, reject) => {
    lines.once("line", (line) => resolve(line.replace("Lapline: ", "")));
    void ended.then(() => reject(new Error("the server ended before it had an address")));
  });
  return { child, ended, address };
}

describe("lapline serve", () => {
  test.each(["SIGTERM", "SIGINT"] as const)("serves the app and the demo boards until %s", async (signal) => {
    const { child, ended, address } = await serve("--port", "0", "--data", "boards");
    const page = await fetch(address);
    expect(page.headers.get("content-type")).toContain("text/html");
    expect(await page.text()).toContain("<html");
    const { boards } = (await (await fetch(new URL("api/boards", address))).json()) as {
      boards: { id: string }[];
    };
    expect(boards.map(({ id }) => id)).toEqual(DEMO_BOARDS.map(({ id }) => id).sort());
    child.kill(signal);
    expect(await ended).toBe(0);
  });

  test("keeps boards in the home folder where no other is named", async () => {
    const { child, ended } = await serve("--port", "0");
    child.kill("SIGTERM");
    await ended;
    expect(await readdir(join(folder, ".lapline"))).toContain("shop.sqlite");
  });

  test("says that a port is taken", async () => {
    const { child, ended, address } = await serve("--port", "0", "--data", "boards");
    const { code, out, err } = await runLapline(
      ["serve", "--port", new URL(address).port, "--data", "boards"],
      folder,
    );
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(/port \d+ is taken.*--port/i);
    child.kill("SIGTERM");
    await ended;
  });
});
