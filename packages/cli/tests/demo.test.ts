import { mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DEMO_BOARDS } from "@lapline/contract";
import { afterAll, beforeAll, expect, test } from "vitest";
import packageFile from "../package.json" with { type: "json" };
import { runHere } from "./runHere";

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "lapline-demo-"));
});
afterAll(() => rm(folder, { recursive: true }));

const names = DEMO_BOARDS.map(({ id }) => `${id}.json`);

test("demo writes the boards into a new folder and names them", async () => {
  const { code, out, err } = await runHere(["demo", join(folder, "shed", "boards")]);
  expect({ code, err }).toEqual({ code: 0, err: "" });
  expect(out.split("\n")).toEqual(names.map((name) => join(folder, "shed", "boards", name)));
  expect((await readdir(join(folder, "shed", "boards"))).sort()).toEqual([...names].sort());
});

test("demo may be asked for again, and puts back what is missing", async () => {
  await rm(join(folder, "shed", "boards", names[0] ?? ""));
  expect((await runHere(["demo", join(folder, "shed", "boards")])).code).toBe(0);
  expect((await readdir(join(folder, "shed", "boards"))).sort()).toEqual([...names].sort());
});

test("demo leaves a changed board alone and writes nothing else either", async () => {
  const boards = join(folder, "shed", "boards");
  await rm(join(boards, names[0] ?? ""));
  await writeFile(join(boards, names[1] ?? ""), "my own work");
  const { code, out, err } = await runHere(["demo", join(folder, "shed", "boards")]);
  expect({ code, out }).toEqual({ code: 2, out: "" });
  expect(err).toContain(names[1]);
  expect(await readFile(join(boards, names[1] ?? ""), "utf8")).toBe("my own work");
  expect(await readdir(boards)).not.toContain(names[0]);
});

test("demo does not make a folder of a file", async () => {
  await writeFile(join(folder, "a-file"), "");
  const { code, err } = await runHere(["demo", join(folder, "a-file")]);
  expect(code).toBe(2);
  expect(err).toContain("a file stands where a folder is named");
});

test("--help and --version print and are done", async () => {
  for (const args of [["--help"], ["help"], ["plan", "--help"]]) {
    const { code, out, err } = await runHere(args);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const options = args[0] === "plan" ? " [--json] [--units inch|mm]" : "\n";
    expect(out).toContain(`lapline plan FILE${options}`);
  }
  expect(await runHere(["--version"])).toEqual({
    code: 0,
    out: packageFile.version,
    err: "",
  });
});
