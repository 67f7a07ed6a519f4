import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { buildFinset } from "../src/finset/buildFinset";
import type { FinsInput } from "../src/finset/FinsInput";
import { expectStated } from "./fixtures/expectStated";
import { type FinsetBoardSpec, makeFinsetBoard } from "./fixtures/finsetBoard";

interface Case {
  readonly name: string;
  readonly board: FinsetBoardSpec;
  readonly fins: FinsInput;
  readonly expected: { readonly marks: Readonly<Record<string, unknown>> } & Readonly<
    Record<string, unknown>
  >;
}

interface Reference {
  readonly tolerance: number;
  readonly cases: readonly Case[];
}

const read = (name: string): Reference =>
  JSON.parse(readFileSync(new URL(`./reference/finset/${name}`, import.meta.url), "utf8"));

describe("fins set out, against plane trigonometry worked out apart (reference/finset/setting-out.json)", () => {
  const { cases, tolerance } = read("setting-out.json");

  it("holds at least twenty cases and every arrangement", () => {
    expect(cases.length).toBeGreaterThanOrEqual(20);
    const arrangements = new Set(cases.map(({ fins }) => fins.arrangement));
    expect([...arrangements].sort()).toEqual(
      ["five-box", "quad", "single", "single-sides", "tri", "twin", "twin-trailer"].sort(),
    );
  });

  it.each(cases)("$name", ({ board, fins, expected }) => {
    const { value, findings } = buildFinset(fins, makeFinsetBoard(board));
    expect(findings.filter(({ severity }) => severity === "blocker")).toEqual([]);
    const byId = Object.fromEntries((value?.marks ?? []).map((mark) => [mark.id, mark]));
    expect(Object.keys(byId).sort()).toEqual(Object.keys(expected.marks).sort());
    expectStated({ ...value, marks: byId }, expected, "finset", tolerance);
  });
});

describe("facts of the trade", () => {
  it("gives 3.415° for a mark 11 1/4 in up, 1 1/8 in from a rail 7 1/4 in out, aimed 2 1/2 in beside the nose of a 72 in board (common practice, no source; trigonometry)", () => {
    const found = read("setting-out.json").cases.find(({ name }) =>
      name.startsWith("string beside the nose"),
    )!;
    const { value } = buildFinset(found.fins, makeFinsetBoard(found.board));
    expect(((value?.marks[0]?.toeRad ?? 0) * 180) / Math.PI).toBeCloseTo(3.415, 3);
  });

  it("finds 1 mm worth 0.52° at one end of a 110 mm base, and a few hundredths at the string's nose end (facts of the trade, common practice, no source; 1/110 and 1/1500 rad)", () => {
    const found = read("setting-out.json").cases.find(({ name }) => name === "what a millimetre is worth")!;
    const { value } = buildFinset(found.fins, makeFinsetBoard(found.board));
    const degreesPerMm = (radPerM = 0) => (radPerM * 180) / Math.PI / 1000;
    expect(degreesPerMm(value?.marks[0]?.worth.baseEndRadPerM)).toBeCloseTo(0.52, 2);
    expect(Math.abs(degreesPerMm(value?.marks[0]?.worth.noseEndRadPerM))).toBeCloseTo(0.038, 3);
  });

  it("gives 0.238 in over a 4 in base for a mark 5 in out aimed 84 in ahead (worked identity, sine)", () => {
    const found = read("setting-out.json").cases.find(({ name }) => name.includes("worked identity"))!;
    const { value } = buildFinset(found.fins, makeFinsetBoard(found.board));
    expect((value?.marks[0]?.toeOverBaseM ?? 0) / 0.0254).toBeCloseTo(0.238, 3);
  });
});
