import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { DEMO_BOARDS } from "./demoBoards";
import { formatBoardFile } from "./formatBoardFile";
import { readBoardFile } from "./readBoardFile";

const surveyOf = (id: string) => {
  const demo = DEMO_BOARDS.find((board) => board.id === id);
  const read = readBoardFile(demo?.text ?? "");
  if (!read.ok) throw new Error(`${id} cannot be read`);
  return read.board.survey;
};

describe("the demo boards", () => {
  it.each(DEMO_BOARDS.map(({ id, fileName, text, file }) => ({ id, fileName, text, file })))(
    "$id reads, and its file is as the tool writes it",
    ({ fileName, text, file }) => {
      expect(readFileSync(new URL(`../demo/${fileName}`, import.meta.url), "utf8")).toBe(text);
      expect(readBoardFile(text)).toMatchObject({ ok: true, file });
      expect(JSON.parse(formatBoardFile(file))).toStrictEqual(file);
    },
  );

  it("the tri is 4 mm out of true about a skewed stringer", () => {
    const differences = surveyOf("six-four-tri").stations.map(({ leftM = 0, rightM = 0 }) => leftM - rightM);
    expect(Math.max(...differences.map(Math.abs))).toBeCloseTo(0.004, 9);
    // From right fuller at the tail to left fuller at the nose.
    expect(differences[0]).toBeLessThan(0);
    expect(differences.at(-1)).toBeGreaterThan(0);
  });

  it("the long board holds one half-width that is an inch off", () => {
    const differences = surveyOf("nine-two-long").stations.map(({ leftM = 0, rightM = 0 }) =>
      Math.abs(leftM - rightM),
    );
    const isInchOff = differences.map((differM) => differM > 0.02);
    expect(isInchOff.filter(Boolean)).toHaveLength(1);
    expect(isInchOff.indexOf(true)).toBe(3);
    expect(differences[3]).toBeCloseTo(0.0254, 2);
  });

  it("the quad is true within what rounding to 1/16 in leaves", () => {
    const differences = surveyOf("five-ten-quad").stations.map(({ leftM = 0, rightM = 0 }) =>
      Math.abs(leftM - rightM),
    );
    expect(Math.max(...differences)).toBeLessThan(0.0017);
  });
});
