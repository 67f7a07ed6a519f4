import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { SOURCES } from "../packages/engine/src/sources/sources";
import { ROOT, readSourceFiles } from "./sourceFiles";

const isTest = (path: string) => path.endsWith(".test.ts");
const files = readSourceFiles("packages/engine/src", /\.ts$/).filter(({ path }) => !isTest(path));
const constantFiles = files.filter(({ path }) => path.startsWith("packages/engine/src/constants/"));

type Fields = Readonly<Record<string, unknown>>;
const isFields = (value: unknown): value is Fields => typeof value === "object" && value !== null;
const isSourced = (value: unknown): value is Fields => isFields(value) && typeof value.source === "string";

/** Every exported value of the constants, by `file:name`. */
async function readConstants(): Promise<ReadonlyArray<readonly [string, unknown]>> {
  const modules = await Promise.all(
    constantFiles.map(async ({ path }) => ({ path, exports: (await import(join(ROOT, path))) as Fields })),
  );
  return modules.flatMap(({ path, exports }) =>
    Object.entries(exports)
      .filter(([, value]) => typeof value !== "function")
      .map(
        ([name, value]) => [`${path.replace("packages/engine/src/constants/", "")}:${name}`, value] as const,
      ),
  );
}

/** Numbers that say under what condition the sourced value beside them was found, such as the mass of the cup. */
const CONDITIONS = new Set(["massKg", "temperatureK", "dose", "uvIndex"]);

/** Numbers for which neither they nor a record around them names a source. */
function findBareNumbers(value: unknown, path: string): readonly string[] {
  if (typeof value === "number") return [path];
  if (!isFields(value) || isSourced(value)) return [];
  const entries = Object.entries(value);
  const besideSourced = entries.some(([, child]) => isSourced(child) && "value" in child);
  return entries
    .filter(([key, child]) => !(besideSourced && typeof child === "number" && CONDITIONS.has(key)))
    .flatMap(([key, child]) => findBareNumbers(child, `${path}.${key}`));
}

function findUnknownSources(value: unknown, path: string): readonly string[] {
  if (!isFields(value)) return [];
  const own =
    typeof value.source === "string" && !(value.source in SOURCES) ? [`${path}: ${value.source}`] : [];
  return [
    ...own,
    ...Object.entries(value).flatMap(([key, child]) => findUnknownSources(child, `${path}.${key}`)),
  ];
}

describe("every number that the engine brings along", () => {
  test("says where it comes from", async () => {
    const constants = await readConstants();
    expect(constants.length).toBeGreaterThan(10);
    expect(constants.flatMap(([name, value]) => findBareNumbers(value, name))).toEqual([]);
  });

  test("names a source that is in the list", async () => {
    const constants = await readConstants();
    expect(constants.flatMap(([name, value]) => findUnknownSources(value, name))).toEqual([]);
  });
});

test("every source in the list is used", () => {
  const used = files.filter(({ path }) => !path.endsWith("/sources/sources.ts")).map(({ text }) => text);
  const unused = Object.keys(SOURCES).filter((id) => !used.some((text) => text.includes(`"${id}"`)));
  expect(unused).toEqual([]);
});
