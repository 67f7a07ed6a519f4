import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { BoardStore } from "./BoardStore";
import { openFolderStore } from "./openFolderStore";

let folder: string;
let store: BoardStore;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "lapline-store-"));
  store = await openFolderStore(join(folder, "boards"));
});
afterEach(() => rm(folder, { recursive: true }));

describe("the folder store", () => {
  test("keeps a board's text as it was and lists boards by id", async () => {
    expect(await store.write("b", '{"name":"½ of it"}')).toMatchObject({ kind: "written", created: true });
    await store.write("a", "{}");
    expect((await store.read("b"))?.text).toBe('{"name":"½ of it"}');
    expect((await store.list()).map((board) => board.id)).toEqual(["a", "b"]);
    expect(await readFile(join(folder, "boards", "b.json"), "utf8")).toBe('{"name":"½ of it"}');
  });

  test("leaves no half-written file behind", async () => {
    await store.write("a", "1");
    await store.write("a", "2");
    expect(await readdir(join(folder, "boards"))).toEqual(["a.json"]);
  });

  test("leaves the old text and no other file where the new one cannot be put in place", async () => {
    await mkdir(join(folder, "boards", "a.json"));
    await expect(store.write("a", "1")).rejects.toThrow();
    expect(await readdir(join(folder, "boards"))).toEqual(["a.json"]);
    expect(await store.write("b", "1")).toMatchObject({ kind: "written" });
  });

  test("writes only onto the revision that was read", async () => {
    const first = await store.write("a", "1");
    if (first.kind !== "written") throw new Error("the first write was refused");
    expect(await store.write("a", "2", { ifRevision: first.revision })).toMatchObject({ created: false });
    expect(await store.write("a", "3", { ifRevision: first.revision })).toEqual({
      kind: "changed-meanwhile",
    });
    expect(await store.write("a", "3", { ifAbsent: true })).toEqual({ kind: "changed-meanwhile" });
    expect((await store.read("a"))?.text).toBe("2");
  });

  test("lets one of several writers onto the same revision through", async () => {
    const texts = Array.from({ length: 20 }, (_, i) => String(i));
    const results = await Promise.all(texts.map((text) => store.write("a", text, { ifAbsent: true })));
    expect(results.filter((result) => result.kind === "written")).toHaveLength(1);
    expect((await store.read("a"))?.text).toBe("0");
  });

  test.each(["../a", "a/b", "A", "", ".", "a.json", "a--b", "-a", "a".repeat(65), "a\0b"])(
    "knows no board %j",
    async (id) => {
      expect(await store.read(id)).toBeNull();
      expect(() => store.write(id, "{}")).toThrow(RangeError);
    },
  );

  test("passes over files that are no boards", async () => {
    await writeFile(join(folder, "boards", "Notes.txt"), "");
    await writeFile(join(folder, "boards", ".a.tmp"), "");
    await mkdir(join(folder, "boards", "old.json"));
    expect(await store.list()).toEqual([]);
  });
});
