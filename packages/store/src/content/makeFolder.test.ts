import { mkdtemp, rm, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { makeFolder } from "./makeFolder";

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "lapline-"));
});
afterEach(() => rm(folder, { recursive: true }));

it("makes what is missing, once or twice", async () => {
  const deep = join(folder, "a", "b", "c");
  await makeFolder(deep);
  await makeFolder(deep);
  expect((await stat(deep)).isDirectory()).toBe(true);
});

it("refuses where a file stands in the way", async () => {
  await writeFile(join(folder, "a"), "");
  await expect(makeFolder(join(folder, "a"))).rejects.toMatchObject({ code: "ENOTDIR" });
  await expect(makeFolder(join(folder, "a", "b"))).rejects.toMatchObject({ code: "ENOTDIR" });
});

it.runIf(process.platform === "linux")(
  "comes back with an error where the system takes no folders",
  async () => {
    await expect(makeFolder("/proc/lapline/boards")).rejects.toMatchObject({ code: "ENOENT" });
  },
);
