import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { loadWebFiles } from "./loadWebFiles";

test("keys every file by its address, with its type and whether it lasts", async () => {
  const folder = await mkdtemp(join(tmpdir(), "lapline-web-"));
  await mkdir(join(folder, "assets"));
  await writeFile(join(folder, "index.html"), "<!doctype html>");
  await writeFile(join(folder, "assets", "app-1a2b.js"), "export {}");
  await writeFile(join(folder, "assets", "sign.WOFF2"), "");
  const files = await loadWebFiles(folder);
  expect([...files.keys()].sort()).toEqual(["/assets/app-1a2b.js", "/assets/sign.WOFF2", "/index.html"]);
  expect(files.get("/index.html")).toMatchObject({ type: "text/html; charset=utf-8", lasting: false });
  expect(files.get("/assets/app-1a2b.js")).toMatchObject({
    type: "text/javascript; charset=utf-8",
    lasting: true,
  });
  expect(files.get("/assets/sign.WOFF2")?.type).toBe("font/woff2");
  await rm(folder, { recursive: true });
});

test("says what to do where the web app is not built", async () => {
  await expect(loadWebFiles(join(tmpdir(), "lapline-no-such-folder"))).rejects.toThrow("npm run build");
});
