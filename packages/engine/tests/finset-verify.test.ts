import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { buildFinset } from "../src/finset/buildFinset";
import type { FinsInput } from "../src/finset/FinsInput";
import { expectStated, keyById } from "./fixtures/expectStated";
import { type FinsetBoardSpec, makeFinsetBoard } from "./fixtures/finsetBoard";

interface Case {
  readonly name: string;
  readonly board: FinsetBoardSpec;
  readonly fins: FinsInput;
  readonly expected: Readonly<Record<string, unknown>>;
}

const { cases, tolerance } = JSON.parse(
  readFileSync(new URL("./reference/finset/verify.json", import.meta.url), "utf8"),
) as { readonly cases: readonly Case[]; readonly tolerance: number };

describe("mark and verify, against geometry worked out apart (reference/finset/verify.json)", () => {
  it("holds every kind of box and every kind of reading", () => {
    const text = JSON.stringify(cases);
    expect(cases.length).toBeGreaterThanOrEqual(20);
    for (const word of ["before-glass", "after-laminate", "after-fill", "glassed-on"])
      expect(text).toContain(word);
    for (const word of ["strings", "diagonals", "cantBlocks", "depthStops", "proud", "asSet"])
      expect(text).toContain(word);
  });

  it.each(cases)("$name", ({ board, fins, expected }) => {
    const { value, findings } = buildFinset(fins, makeFinsetBoard({ thicknessM: 0.06, ...board }));
    expect(findings.filter(({ severity }) => severity === "blocker")).toEqual([]);
    const verify = value === null ? {} : { ...value.verify, leashPlug: value.leashPlug, cautions: [] };
    expectStated(keyById(verify), expected, "verify", tolerance);
  });
});
