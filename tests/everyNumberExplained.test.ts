import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { explain, planBuild } from "@lapline/engine";
import { describe, expect, it } from "vitest";
import { listNumbers } from "./listNumbers";

describe.each(DEMO_BOARDS)("the plan of $id", ({ text }) => {
  const read = readBoardFile(text);
  if (!read.ok) throw new Error("a demo board must be readable");
  const { findings, assumptions, ...numbers } = planBuild(read.board);
  const plan = { ...numbers, findings, assumptions };

  it("can say how each of its numbers came about", () => {
    const paths = listNumbers(numbers, "");
    expect(paths.length).toBeGreaterThan(500);
    const mute = paths.filter((path) => "message" in explain(read.board, plan, path));
    expect(mute.slice(0, 20)).toEqual([]);
  });

  it("names the formula, what went in and a source, in words", () => {
    const found = explain(read.board, plan, "shape.volumeM3");
    if ("message" in found) throw new Error(found.message);
    expect(found.formula).toContain("∫");
    expect(found.inputs.length).toBeGreaterThan(2);
    expect(found.sources.length).toBeGreaterThan(0);
  });

  it("tells of findings at a number's own place, not of those whose place only begins alike", () => {
    const at = (path: string) => ({ code: path, severity: "note", path, text: "", says: [] }) as const;
    const found = explain(
      read.board,
      { ...plan, findings: [at("fins"), at("finset"), at("finset.asymmetryM")] },
      "finset.asymmetryM",
    );
    if ("message" in found) throw new Error(found.message);
    expect(found.findings.map(({ path }) => path)).toEqual(["finset", "finset.asymmetryM"]);
  });
});
