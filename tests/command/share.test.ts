import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildFirst } from "../buildFirst";
import { runLapline, startLapline } from "./runLapline";

let folder: string;
beforeAll(async () => {
  buildFirst("cli", "web");
  folder = await mkdtemp(join(tmpdir(), "lapline-share-"));
});
afterAll(() => rm(folder, { recursive: true }));

describe("lapline serve --share", () => {
  test("shows a code and warns of listeners; lapline pair makes the next code", async () => {
    const child = startLapline(["serve", "--share", "--port", "0", "--share-port", "0"], folder);
    const ended = new Promise((resolve) => child.on("close", resolve));
    const [out, err] = [child.stdout, child.stderr].map((input) => createInterface({ input }));
    const told: string[] = [];
    // Both are listened to from the first: what is told meanwhile would be lost.
    const [address] = await Promise.all([
      new Promise<string>((resolve) => out?.once("line", (line) => resolve(line.replace("Lapline: ", "")))),
      new Promise<void>((resolve) =>
        err?.on("line", (line) => {
          told.push(line);
          if (line.startsWith("Another code")) resolve();
        }),
      ),
    ]);
    const text = told.join("\n");
    expect(text).toContain("whoever is on the same network can listen");
    // A machine without a network has no address to scan, and says so.
    expect(text).toMatch(/Code \d{4} \d{4} lets one device in at the bench|no address on a local network/);
    const { port } = new URL(address);
    const pair = await runLapline(["pair", "--keeper", "--port", port], folder);
    expect(pair).toMatchObject({ code: 0 });
    expect(pair.out).toMatch(/^\d{8}\n$/);
    const { offer } = (await (await fetch(new URL("api/pairing", address))).json()) as {
      offer: { code: string; role: string };
    };
    expect(offer).toMatchObject({ code: pair.out.trim(), role: "keeper" });
    child.kill("SIGTERM");
    expect(await ended).toBe(0);
  });

  test("answers this machine only where it is not asked for, and makes no code", async () => {
    const child = startLapline(["serve", "--port", "0"], folder);
    const ended = new Promise((resolve) => child.on("close", resolve));
    const lines = createInterface({ input: child.stdout });
    const address = await new Promise<string>((resolve) =>
      lines.once("line", (line) => resolve(line.replace("Lapline: ", ""))),
    );
    const pair = await runLapline(["pair", "--port", new URL(address).port], folder);
    expect(pair).toMatchObject({ code: 2, out: "" });
    expect(pair.err).toContain("lapline serve --share");
    child.kill("SIGTERM");
    await ended;
  });

  test.each([
    [
      ["serve", "--cert", "a.pem", "--key", "b.pem"],
      "--cert is for devices on the local network: give --share",
    ],
    [["serve", "--share-port", "5190"], "give --share as well"],
    [["serve", "--share", "--cert", "a.pem"], "HTTPS needs both"],
    [
      ["serve", "--share", "--cert", "none.pem", "--key", "none.pem"],
      "none.pem cannot be read: it is not there",
    ],
    [["serve", "--share", "--share-port", "x"], "--share-port is a whole number"],
    [["pair", "--port", "1"], "No Lapline answers on port 1"],
  ])("%j is refused in a line", async (words, says) => {
    const { code, out, err } = await runLapline(words, folder);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toContain(says);
  });
});
