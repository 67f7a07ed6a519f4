import { describe, expect, test } from "vitest";
import { readImports, readSourceFiles, type SourceFile } from "./sourceFiles";

/** The engine's folders from the ground up; those in one row are siblings and do not know each other. */
const TIERS: ReadonlyArray<readonly string[]> = [
  ["foundation"],
  ["sources"],
  ["constants"],
  ["materials"],
  ["geometry"],
  ["survey"],
  ["shape"],
  ["finset", "layup"],
  ["cutplan", "mix", "sanding", "weight", "cost"],
  ["steps", "calendar"],
];
/** Files beside the folders, above them all: they put the stages together. */
const ABOVE_ALL = TIERS.length;

/** Reaches up a tier, and why that is right. */
const DECLARED: Readonly<Record<string, string>> = {
  "packages/engine/src/foundation/stage.ts > packages/engine/src/sources/sources":
    "a working names its sources, and only the type of their ids is needed",
};

/** What each package may import of the others. */
const PACKAGES: Readonly<Record<string, readonly string[]>> = {
  engine: [],
  contract: ["engine"],
  present: ["engine"],
  nest: ["engine"],
  store: ["engine", "contract", "present"],
  server: ["engine", "contract", "present", "store"],
  web: ["engine", "contract", "present", "nest"],
  cli: ["engine", "contract", "present", "nest", "store", "server"],
};

const isTest = ({ path }: SourceFile) => /\.test\.tsx?$/.test(path);
const sources = readSourceFiles("packages", /\.tsx?$/).filter(({ path }) =>
  /^packages\/[^/]+\/src\//.test(path),
);
const engine = sources.filter((file) => file.path.startsWith("packages/engine/") && !isTest(file));
const edgesOf = (files: readonly SourceFile[]) =>
  files.flatMap((file) => readImports(file).map((target) => ({ file, target })));

function tierOf(path: string): number {
  const [folder, file] = path.replace("packages/engine/src/", "").split("/");
  return file === undefined ? ABOVE_ALL : TIERS.findIndex((row) => row.includes(folder ?? ""));
}

const folderOf = (path: string) => path.split("/").slice(0, 4).join("/");

describe("the engine", () => {
  test("has only folders that stand in a tier", () => {
    expect(engine.length).toBeGreaterThan(10);
    expect(engine.filter(({ path }) => tierOf(path) < 0).map(({ path }) => path)).toEqual([]);
  });

  test("imports down the tiers only, and siblings do not import each other", () => {
    const wrong = edgesOf(engine)
      .filter(({ target }) => target.startsWith("packages/engine/"))
      .filter(({ file, target }) => {
        const [from, to] = [tierOf(file.path), tierOf(target)];
        const within = from === ABOVE_ALL ? to === ABOVE_ALL : folderOf(file.path) === folderOf(target);
        return !within && to >= from;
      })
      .map(({ file, target }) => `${file.path} > ${target}`)
      .filter((edge) => !(edge in DECLARED));
    expect(wrong).toEqual([]);
  });

  test("depends on nothing but itself", () => {
    const outside = edgesOf(engine).filter(({ target }) => !target.startsWith("packages/engine/src/"));
    expect(outside.map(({ file, target }) => `${file.path} > ${target}`)).toEqual([]);
  });

  test.each([
    ["a clock", /\bDate\.now\b|\bnew Date\(\s*\)|\bperformance\.|\bset(?:Timeout|Interval)\b/],
    ["chance", /\bMath\.random\b|\bcrypto\b/],
    ["the machine", /\bprocess\.|\bglobalThis\b|\bfetch\(|\bconsole\.|\blocalStorage\b/],
  ])("touches no such thing as %s", (_, word) => {
    expect(engine.filter(({ text }) => word.test(stripComments(text))).map(({ path }) => path)).toEqual([]);
  });

  test("rounds only where a number becomes text", () => {
    const rounding = /\bMath\.round\b|\.toFixed\(|\.toPrecision\(/;
    const wrong = engine.filter(({ text }) => rounding.test(stripComments(text)));
    expect(
      wrong.map(({ path }) => path).filter((path) => !/\/foundation\/format\w+\.ts$/.test(path)),
    ).toEqual([]);
  });
});

/** What packages hand out, as others import it: `@lapline/present`, `@lapline/present/paper`. */
const doors = readSourceFiles("packages", /^package\.json$/).flatMap(({ text }) => {
  const { name, exports = {} } = JSON.parse(text) as { name: string; exports?: Record<string, string> };
  return Object.keys(exports).map((door) => name + door.slice(1));
});

describe("the packages", () => {
  test("import each other in one direction", () => {
    const wrong = edgesOf(sources)
      .filter(({ target }) => target.startsWith("@lapline/") || target.startsWith("packages/"))
      .map(({ file, target }) => ({
        from: file.path.split("/")[1] ?? "",
        to: target.split("/")[1] ?? "",
        edge: `${file.path} > ${target}`,
      }))
      .filter(({ from, to }) => from !== to && !PACKAGES[from]?.includes(to));
    expect(wrong.map(({ edge }) => edge)).toEqual([]);
  });

  test("reach into each other through their doors only", () => {
    const inside = edgesOf(sources).filter(
      ({ file, target }) =>
        (target.startsWith("@lapline/") && !doors.includes(target)) || leavesItsPackage(file, target),
    );
    expect(inside.map(({ file, target }) => `${file.path} > ${target}`)).toEqual([]);
  });

  test("hold no cycle of files", () => {
    const graph = new Map(sources.map((file) => [file.path.replace(/\.tsx?$/, ""), readImports(file)]));
    expect(findCycle(graph)).toBeNull();
  });
});

function leavesItsPackage({ path }: SourceFile, target: string): boolean {
  return target.startsWith("packages/") && target.split("/")[1] !== path.split("/")[1];
}

function stripComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\//g, "").replace(/\/\/.*$/gm, "");
}

/** One way round, or null. Walks each file once, keeping the way it came by. */
function findCycle(graph: ReadonlyMap<string, readonly string[]>): readonly string[] | null {
  const done = new Set<string>();
  const visit = (node: string, way: readonly string[]): readonly string[] | null => {
    if (way.includes(node)) return [...way.slice(way.indexOf(node)), node];
    if (done.has(node)) return null;
    for (const next of graph.get(node) ?? []) {
      const found = visit(next, [...way, node]);
      if (found !== null) return found;
    }
    done.add(node);
    return null;
  };
  for (const node of graph.keys()) {
    const found = visit(node, []);
    if (found !== null) return found;
  }
  return null;
}
