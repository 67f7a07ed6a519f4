import { buildHouseSetOffers, HOUSE_SETS, type Plan, planBuild } from "@lapline/engine";
import { describe, expect, it } from "vitest";
import { DEMO_BOARDS } from "../src/demoBoards";
import { formatProblems } from "../src/formatProblems";
import { readBoardFile } from "../src/readBoardFile";
import { boardFromFile } from "../src/si/boardFromFile";
import { editDemo, editPlace } from "./editDemo";
import cases from "./reference/fins.json";

interface Edit {
  readonly at: readonly (string | number)[];
  readonly set: unknown;
}

/** The demo quad with its fins changed, as text. */
function editFins(edits: readonly Edit[]): string {
  const document = editDemo([], null);
  for (const { at, set } of edits) editPlace(document, ["fins", ...at], set);
  return JSON.stringify(document, null, 2);
}

function planOf(text: string): Plan {
  const read = readBoardFile(text);
  if (!read.ok) throw new Error(formatProblems(read.problems));
  return planBuild(read.board);
}

describe("fins that the reader refuses", () => {
  it.each(cases.refused)("$what", ({ edits, path, words }) => {
    const read = readBoardFile(editFins(edits));
    const problems = read.ok ? [] : read.problems;
    const found = problems.find((problem) => problem.path === path);
    expect(found?.message, formatProblems(problems)).toContain(words);
  });
});

describe("fins that the plan finds fault with", () => {
  it.each(cases.found)("$what", ({ edits, code, severity, path, words }) => {
    const { findings } = planOf(editFins(edits));
    const found = findings.find((finding) => finding.code === code && finding.path === path);
    expect(found, JSON.stringify(findings.filter((f) => f.code.startsWith("finset.")))).toMatchObject({
      severity,
    });
    expect(found?.text).toContain(words);
  });

  it("a board file without fins is only noted, since nothing was asked", () => {
    const { finset, findings } = planOf(JSON.stringify(editDemo(["fins"], null)));
    expect(finset).toBeNull();
    expect(findings.filter(({ severity }) => severity === "blocker")).toEqual([]);
    expect(findings.find(({ code }) => code === "finset.none")?.severity).toBe("note");
  });
});

describe("every arrangement", () => {
  it.each(cases.arrangements)("$arrangement", ({ arrangement, set, marks }) => {
    const text = editFins([
      { at: ["arrangement"], set: arrangement },
      { at: ["set"], set },
    ]);
    const { finset, findings } = planOf(text);
    expect(findings.filter(({ severity }) => severity === "blocker")).toEqual([]);
    expect(finset?.marks.map(({ id }) => id)).toEqual(marks);
    expect(finset?.sidesCompared.map(({ id }) => id)).toEqual(["average", "rail", "centreline"]);
    expect(finset?.verify.checks.filter(({ matter }) => matter === "marks")).toHaveLength(marks.length);
  });

  it("is taken from the crotch of a swallow tail", () => {
    const document = editDemo(["survey", "tail"], { kind: "swallow", width: "7 in", depth: "4 in" });
    editPlace(document, ["fins", "fromTailOf"], "crotch");
    editPlace(document, ["fins", "leashPlug", "fromTail"], "2 in");
    const { finset } = planOf(JSON.stringify(document));
    const mark = finset?.marks.find(({ id }) => id === "front-left");
    expect(mark?.trailing.fromCrotchTapeM).toBeCloseTo(11.5 * 0.0254, 9);
    expect(finset?.line.crotchFromTailM).toBeCloseTo(4 * 0.0254, 6);
  });
});

describe("the demo boards", () => {
  it.each(DEMO_BOARDS)("$id: the gate's resin is the glass stage's pocket less its box", ({ file }) => {
    const { finset, layup } = planBuild(boardFromFile(file));
    expect(finset?.verify.boxes.length).toBeGreaterThan(2);
    for (const { id, fillVolumeM3 } of finset?.verify.boxes ?? []) {
      const fitting = layup?.fittings.find((one) => one.id === id);
      expect(fillVolumeM3).toBeCloseTo((fitting?.pocketVolumeM3 ?? 0) - (fitting?.bodyVolumeM3 ?? 0), 12);
    }
  });

  it.each(DEMO_BOARDS)("$id: every house set is offered in both ways", ({ file }) => {
    for (const set of HOUSE_SETS) {
      const offers = buildHouseSetOffers(boardFromFile(file), set);
      expect(offers.map(({ id }) => id)).toEqual(["keep-from-tail", "scale-with-length"]);
      for (const { differences } of offers) expect(differences.length).toBeGreaterThan(2);
    }
  });
});
