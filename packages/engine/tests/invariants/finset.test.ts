import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buildFinset } from "../../src/finset/buildFinset";
import type { FinMark } from "../../src/finset/FinMark";
import type { FinsetPlan } from "../../src/finset/FinsetPlan";
import type { FinInput, ToeInput } from "../../src/finset/FinsInput";
import { boards, number, RULES, sets } from "../fixtures/anyFinset";
import { type FinsetShapeSpec, finsetShape } from "../fixtures/finsetShape";

const RUNS = { seed: 20260412, numRuns: 150 };
const other = (side: FinMark["side"]) => (side === "left" ? "right" : "left");

/** What the mirrored board has to give for a mark: the other side, and left turned to right. */
function mirror(mark: FinMark) {
  const point = (at: FinMark["trailing"]) => ({ ...at, at: { xM: at.at.xM, yM: -at.at.yM } });
  return {
    ...mark,
    id: `${mark.fin}-${other(mark.side)}`,
    side: other(mark.side),
    twistRad: -mark.twistRad,
    trailing: point(mark.trailing),
    leading: point(mark.leading),
  };
}

function mirrored(spec: FinsetShapeSpec): FinsetShapeSpec {
  return {
    ...spec,
    left: spec.right,
    right: spec.left,
    shiftM: -(spec.shiftM ?? 0),
    skewRad: -(spec.skewRad ?? 0),
    twistRad: -(spec.twistRad ?? 0),
  };
}

function expectNear(actual: unknown, expected: unknown, path: string): void {
  if (typeof expected === "number") expect(actual, path).toBeCloseTo(expected, 9);
  else if (expected !== null && typeof expected === "object")
    for (const [key, value] of Object.entries(expected))
      expectNear((actual as Record<string, unknown>)[key], value, `${path}.${key}`);
  else expect(actual, path).toBe(expected);
}

const marksOf = (plan: FinsetPlan | null) => plan?.marks ?? [];

describe("the mirror", () => {
  it("turns a mirrored board into the mirrored marks", () => {
    fc.assert(
      fc.property(boards, sets, (spec, fins) => {
        const here = marksOf(buildFinset(fins, finsetShape(spec)).value);
        const there = marksOf(buildFinset(fins, finsetShape(mirrored(spec))).value);
        expect(there.length).toBe(here.length);
        for (const mark of here) {
          const turned = mirror(mark);
          expectNear(
            there.find(({ id }) => id === turned.id),
            turned,
            turned.id,
          );
        }
      }),
      RUNS,
    );
  });

  it("finds no asymmetry on a board that has none, by any of the three rules", () => {
    fc.assert(
      fc.property(boards, sets, fc.constantFrom(...RULES), (spec, fins, sides) => {
        const shape = finsetShape({ ...spec, right: spec.left, shiftM: 0, skewRad: 0 });
        const plan = buildFinset({ ...fins, sides }, shape).value;
        if (plan === null) return;
        expect(plan.asymmetryM).toBe(0);
        for (const { asymmetryM } of plan.sidesCompared) expect(asymmetryM).toBe(0);
        for (const { diagonals } of plan.pairs) for (const { differM } of diagonals) expect(differM).toBe(0);
      }),
      RUNS,
    );
  });
});

describe("marks", () => {
  it("lie inside the outline, or a blocker says which does not", () => {
    let [kept, stopped] = [0, 0];
    fc.assert(
      fc.property(boards, sets, (spec, fins) => {
        const shape = finsetShape(spec);
        const { value, findings } = buildFinset(fins, shape);
        const ids = marksOf(value).map(({ id }) => id);
        const blocked = findings.filter(({ severity }) => severity === "blocker");
        if (ids.length < 4) expect(blocked.length).toBeGreaterThan(0);
        stopped += 4 - ids.length;
        for (const { side, trailing, leading } of marksOf(value)) {
          kept += 1;
          for (const { at } of [trailing, leading]) {
            expect(at.xM).toBeGreaterThanOrEqual(0);
            expect(at.xM).toBeLessThanOrEqual(spec.lengthM);
            const outM = side === "left" ? at.yM : -at.yM;
            expect(outM).toBeLessThanOrEqual(shape.halfWidthM(side as "left", at.xM) + 1e-12);
          }
        }
      }),
      RUNS,
    );
    // Both kinds have to come up often, or the property says little.
    expect(kept).toBeGreaterThan(50);
    expect(stopped).toBeGreaterThan(50);
  });

  it("never hold a number that is none", () => {
    fc.assert(
      fc.property(boards, sets, (spec, fins) => {
        const text = JSON.stringify(buildFinset(fins, finsetShape(spec)).value, (_key, value: unknown) =>
          typeof value === "number" && !Number.isFinite(value) ? "not finite" : value,
        );
        expect(text).not.toContain("not finite");
      }),
      RUNS,
    );
  });

  it("leave the input as it was", () => {
    fc.assert(
      fc.property(boards, sets, (spec, fins) => {
        const before = JSON.stringify(fins);
        buildFinset(fins, finsetShape(spec));
        expect(JSON.stringify(fins)).toBe(before);
      }),
      { ...RUNS, numRuns: 20 },
    );
  });
});

describe("toe", () => {
  const board = finsetShape({ lengthM: 1.8, left: () => 0.2, right: () => 0.2 });
  const front = (toe: ToeInput, more: Partial<FinInput> = {}) =>
    buildFinset(
      {
        arrangement: "twin",
        set: [{ fin: "front", fromTailM: 0.28, fromRailM: 0.03, baseM: 0.11, toe, ...more }],
      },
      board,
    ).value?.marks[0];

  it("stays the same, within 1e-9, through every way of stating it and back", () => {
    fc.assert(
      fc.property(
        number(0.0001, 0.3),
        number(0.1, 1.2),
        number(0.01, 0.15),
        number(0.05, 0.2),
        (angleRad, up, rail, base) => {
          const more = { fromTailM: up, fromRailM: rail, baseM: base };
          const stated = front({ kind: "angle", angleRad }, more);
          if (stated === undefined) return;
          const ways: readonly ToeInput[] = [
            { kind: "aimBesideNose", offsetM: stated.aimBesideNoseM },
            { kind: "overBase", overM: stated.toeOverBaseM },
            ...(stated.aimBeyondNoseM === null
              ? []
              : [{ kind: "aimBeyondNose" as const, beyondM: stated.aimBeyondNoseM }]),
          ];
          expect(ways.length).toBe(3);
          for (const way of ways) {
            const back = front(way, more);
            expect(Math.abs((back?.toeRad ?? 9) - angleRad)).toBeLessThan(1e-9);
            expect(Math.abs((back?.aimBesideNoseM ?? 9) - stated.aimBesideNoseM)).toBeLessThan(1e-9);
          }
        },
      ),
      RUNS,
    );
  });

  it("is straighter the farther out the aim lies, beside the nose or beyond it", () => {
    fc.assert(
      fc.property(number(-0.1, 0.2), number(0.001, 0.1), number(0, 3), (offsetM, moreM, beyondM) => {
        const beside = (at: number) => front({ kind: "aimBesideNose", offsetM: at })!.toeRad;
        const beyond = (at: number) => front({ kind: "aimBeyondNose", beyondM: at })!.toeRad;
        expect(beside(offsetM + moreM)).toBeLessThan(beside(offsetM));
        expect(beyond(beyondM + moreM)).toBeLessThan(beyond(beyondM));
      }),
      RUNS,
    );
  });

  it("changes by what a millimetre is said to be worth, against a difference quotient", () => {
    fc.assert(
      fc.property(number(-0.02, 0.12), number(0.1, 1), (offsetM, up) => {
        const stepM = 1e-6;
        const at = (aim: number, tail: number, rail: number) =>
          front({ kind: "aimBesideNose", offsetM: aim }, { fromTailM: tail, fromRailM: rail })!;
        const here = at(offsetM, up, 0.03);
        const slope = (more: FinMark, less: FinMark) => (more.toeRad - less.toeRad) / (2 * stepM);
        const { worth } = here;
        expect(slope(at(offsetM + stepM, up, 0.03), at(offsetM - stepM, up, 0.03))).toBeCloseTo(
          worth.noseEndRadPerM,
          6,
        );
        expect(slope(at(offsetM, up + stepM, 0.03), at(offsetM, up - stepM, 0.03))).toBeCloseTo(
          worth.trailingAlongRadPerM,
          6,
        );
        expect(slope(at(offsetM, up, 0.03 - stepM), at(offsetM, up, 0.03 + stepM))).toBeCloseTo(
          worth.trailingAcrossRadPerM,
          6,
        );
      }),
      RUNS,
    );
  });
});
