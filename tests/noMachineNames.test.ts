import { expect, test } from "vitest";
import { readSourceFiles } from "./sourceFiles";

/** Written in pieces, so that this file does not find itself. */
const MACHINE_FOLDERS = ["work", "tmp", "root", "home", "Users", "var/folders"];
const MACHINE_PATH = new RegExp(`(?:^|[\\s"'\`(=:,;])/(?:${MACHINE_FOLDERS.join("|")})/`, "m");
const REGISTRY = new RegExp(["registry\\.[a-z]", "npmjs\\.(?:org|com)", '"resolved": "https?:'].join("|"));
const BINARY = /\.(?:png|jpe?g|ico|woff2?|ttf|pdf|wasm)$/;

const files = readSourceFiles(".", /./).filter(({ path }) => !BINARY.test(path));

test.each([
  ["a folder of somebody's machine", MACHINE_PATH],
  ["a package registry", REGISTRY],
])("no file names %s", (_, pattern) => {
  expect(files.length).toBeGreaterThan(50);
  expect(files.filter(({ text }) => pattern.test(text)).map(({ path }) => path)).toEqual([]);
});
