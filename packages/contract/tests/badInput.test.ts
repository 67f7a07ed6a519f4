import { describe, expect, it } from "vitest";
import { DEMO_BOARDS } from "../src/demoBoards";
import { formatProblems } from "../src/formatProblems";
import type { Problem } from "../src/Problem";
import { readBoardFile } from "../src/readBoardFile";
import { editDemo } from "./editDemo";
import cases from "./reference/bad-input.json";

interface Expected {
  readonly path: string;
  readonly read: string;
  readonly words: string;
}

function problemsIn(text: string): readonly Problem[] {
  const result = readBoardFile(text);
  if (result.ok) throw new Error("was taken as a board");
  return result.problems;
}

function expectProblem(text: string, { path, read, words }: Expected): void {
  const problems = problemsIn(text);
  const found = problems.find((problem) => problem.path === path && problem.message.includes(words));
  expect(found, formatProblems(problems)).toBeDefined();
  expect(found?.read).toBe(read);
}

describe("bad input", () => {
  it.each(cases.texts)("$what", (row) => {
    expectProblem(row.text, row);
  });

  it.each(cases.edits)("$what", (row) => {
    expectProblem(JSON.stringify(editDemo(row.at, row.set)), row);
  });

  it.each(cases.edits)("$what: told once, at its own line", (row) => {
    const text = JSON.stringify(editDemo(row.at, row.set), null, 2);
    const problems = problemsIn(text);
    expect(new Set(problems.map(({ path, message }) => path + message)).size).toBe(problems.length);
    for (const { line } of problems) expect(line).toBeLessThanOrEqual(text.split("\n").length);
  });
});

describe("bad input by size", () => {
  it("10 MB are refused before they are parsed", () => {
    const [problem] = problemsIn(`{"name":"${"x".repeat(10_000_000)}"}`);
    expect(problem).toMatchObject({ path: "(file)", read: "10.1 MB of text" });
  });

  it.each(["[", '{"a":', '{"survey":['])("a million of %s", (opening) => {
    const [problem] = problemsIn(opening.repeat(150_000));
    expect(problem?.path).toBe("(file)");
    expect(problem?.message).toContain("brackets deep");
  });
});

describe("bad input by count", () => {
  it.each(['{"a":[1', '{"a":{"b":1', "[{},{}"])("more values than a board file ever has: %s", (opening) => {
    const [problem] = problemsIn(opening + ",1".repeat(30_000));
    expect(problem?.path).toBe("(file)");
    expect(problem?.message).toContain("values");
  });
});

describe("several problems", () => {
  it("are told at once, in the order of the file", () => {
    const text = JSON.stringify(
      { format: "lapline-board/1", name: 5, survey: { length: 70, nose: {}, tail: {}, stations: 1 } },
      null,
      1,
    );
    const problems = problemsIn(text);
    expect(problems.map(({ path }) => path)).toEqual([
      "name",
      "survey.length",
      "survey.nose.kind",
      "survey.tail.kind",
      "survey.stations",
    ]);
    expect(problems.map(({ line }) => line)).toEqual([3, 5, 6, 7, 8]);
  });

  it("are cut off after fifty, with a count of the rest", () => {
    const stations = Array.from({ length: 80 }, (_, i) => ({ fromTail: i }));
    const problems = problemsIn(JSON.stringify(editDemo(["survey", "stations"], stations)));
    expect(problems).toHaveLength(51);
    expect(problems.at(-1)).toMatchObject({ path: "(file)", read: "80 problems", message: "and 30 more" });
  });

  const unknownFields = (count: number) =>
    JSON.stringify(
      editDemo(["shop"], Object.fromEntries(Array.from({ length: count }, (_, i) => [`field${i}`, 1]))),
    );

  it("stay few with twenty thousand unknown fields", () => {
    expect(problemsIn(unknownFields(20_000))).toHaveLength(51);
  });

  it("are one where there are more values than any board has", () => {
    const [only, ...more] = problemsIn(unknownFields(100_000));
    expect(only?.message).toContain("never has more than 30000 values");
    expect(more).toEqual([]);
  });

  it("read as one line each", () => {
    const text = formatProblems(problemsIn(JSON.stringify(editDemo(["survey", "length"], 70), null, 2)));
    expect(text).toBe(
      'line 10, survey.length: read 70; no unit: 70 in (1778.0 mm) or 70 mm (2 3/4 in)? Write it in quotes, such as "11 1/4 in"',
    );
  });
});

describe("what is not bad input", () => {
  it("fewer than four stations: the engine says which to take next", () => {
    const result = readBoardFile(JSON.stringify(editDemo(["survey", "stations"], [])));
    expect(result.ok).toBe(true);
  });

  it("brackets inside quotes", () => {
    expect(readBoardFile(JSON.stringify(editDemo(["name"], `${"[".repeat(100)}\\"{`))).ok).toBe(true);
  });

  it("a byte order mark before the file", () => {
    expect(readBoardFile(`\ufeff${DEMO_BOARDS[0]?.text}`).ok).toBe(true);
  });

  it("a taped station a little beyond a straight length", () => {
    const straight = editDemo(["survey", "lengthBy"], "straight");
    Reflect.set(Object(straight), "survey", {
      ...Object(Reflect.get(Object(straight), "survey")),
      stations: [{ fromTail: "70 1/2 in", left: "0 in", right: "0 in" }],
    });
    expect(readBoardFile(JSON.stringify(straight)).ok).toBe(true);
  });
});
