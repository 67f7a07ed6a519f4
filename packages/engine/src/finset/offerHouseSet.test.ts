import { describe, expect, it } from "vitest";
import { bowedOutline, finsetShape } from "../../tests/fixtures/finsetShape";
import { HOUSE_SETS } from "../constants/houseSets";
import { buildFinset } from "./buildFinset";
import type { FinsInput } from "./FinsInput";
import { offerHouseSet } from "./offerHouseSet";

const INCH = 0.0254;
const DEGREE = Math.PI / 180;
const board = (lengthM: number, widestM = 0.26) =>
  finsetShape({ lengthM, left: bowedOutline(lengthM, widestM), right: bowedOutline(lengthM, widestM) });
const byId = (id: string) => HOUSE_SETS.find((set) => set.id === id)!;

/** Common practice, no source: the ranges of the trade's numbers, in inches and degrees. */
const PRACTICE: Readonly<Record<string, Readonly<Record<string, readonly [number, number]>>>> = {
  "generic-tri front": { up: [10.5, 11.5], rail: [1, 1.25], over: [0.2, 0.3], cant: [5, 9] },
  "generic-tri centre": { up: [3, 4] },
  "generic-quad front": { up: [11, 12], rail: [1.125, 1.25], cant: [5, 9] },
  "generic-quad rear": { up: [5, 7], rail: [1.75, 3], cant: [3, 5] },
  "generic-long-box front": { up: [12, 14], rail: [1.25, 1.5], over: [0.125, 0.25], cant: [3, 9] },
  "generic-long-box centre": { up: [3.5, 8] },
};

describe("the house sets that come with the program", () => {
  it("have names of their own and are marked common practice", () => {
    expect(new Set(HOUSE_SETS.map(({ id }) => id)).size).toBe(HOUSE_SETS.length);
    for (const { source } of HOUSE_SETS) expect(source).toBe("common-practice");
  });

  it("lie inside the ranges of the trade (common practice, no source)", () => {
    for (const set of HOUSE_SETS)
      for (const fin of set.fins) {
        const range = PRACTICE[`${set.id} ${fin.fin}`]!;
        const numbers = {
          up: fin.fromTailM / INCH,
          rail: (fin.fromRailM ?? Number.NaN) / INCH,
          over: (fin.toe?.kind === "overBase" ? fin.toe.overM : Number.NaN) / INCH,
          cant: (fin.cantRad ?? Number.NaN) / DEGREE,
        };
        for (const [key, [low, high]] of Object.entries(range)) {
          const value = numbers[key as keyof typeof numbers];
          expect(value, `${set.id} ${fin.fin} ${key}`).toBeGreaterThanOrEqual(low);
          expect(value, `${set.id} ${fin.fin} ${key}`).toBeLessThanOrEqual(high);
        }
      }
  });

  it("give the rears half to three quarters of the fronts' toe on a quad (common practice, no source)", () => {
    const quad = byId("generic-quad");
    const shape = board(quad.forLengthM, 0.25);
    const [keep] = offerHouseSet({ set: quad, shape, current: undefined });
    const toe = (id: string) => keep!.differences.find((mark) => mark.id === id)!.toeRad;
    expect(toe("rear-left") / toe("front-left")).toBeGreaterThan(0.5);
    expect(toe("rear-left") / toe("front-left")).toBeLessThan(0.76);
  });

  it("can be set out on a board of their own length without a blocker", () => {
    for (const set of HOUSE_SETS) {
      const shape = board(set.forLengthM, 0.27);
      for (const { fins } of offerHouseSet({ set, shape, current: undefined })) {
        const { findings } = buildFinset(fins, shape);
        expect(findings.filter(({ severity }) => severity === "blocker")).toEqual([]);
      }
    }
  });
});

describe("a house set on a shorter board", () => {
  const set = byId("generic-tri");
  const shape = board(set.forLengthM * 0.9);
  const current: FinsInput = {
    arrangement: "tri",
    sides: "rail",
    boxes: "before-glass",
    leashPlug: { fromTailM: 0.08, fromCentrelineM: 0.02, side: "right" },
    set: [
      {
        fin: "front",
        fromTailM: 11.5 * INCH,
        fromRailM: 1.125 * INCH,
        baseM: 4.5 * INCH,
        toe: { kind: "overBase", overM: 0.25 * INCH },
        cantRad: 5 * DEGREE,
        box: { lengthM: 0.13, widthM: 0.02, depthM: 0.018 },
      },
    ],
  };
  const [keep, scale] = offerHouseSet({ set, shape, current });

  it("is offered with its distances from the tail kept, and with them scaled by the length", () => {
    expect(keep).toMatchObject({ id: "keep-from-tail", scale: 1 });
    expect(keep!.fins.set[0]!.fromTailM).toBeCloseTo(11 * INCH, 12);
    expect(scale!.id).toBe("scale-with-length");
    expect(scale!.scale).toBeCloseTo(0.9, 12);
    expect(scale!.fins.set[0]!.fromTailM).toBeCloseTo(9.9 * INCH, 12);
    expect(scale!.fins.set[0]!.fromRailM).toBe(keep!.fins.set[0]!.fromRailM);
  });

  it("shows what would change on each mark, and which marks are new", () => {
    const front = keep!.differences.find(({ id }) => id === "front-left")!;
    expect(front.fromTailTapeDifferM).toBeCloseTo(-0.5 * INCH, 9);
    expect(front.toeDifferRad).toBeCloseTo(0, 12);
    expect(front.cantDifferRad).toBeCloseTo(DEGREE, 12);
    expect(keep!.differences.find(({ id }) => id === "centre")).toMatchObject({
      fromTailTapeDifferM: null,
      toeDifferRad: null,
    });
  });

  it("keeps the builder's boxes, plug and rule for the sides", () => {
    expect(keep!.fins).toMatchObject({ sides: "rail", boxes: "before-glass", leashPlug: current.leashPlug! });
    expect(keep!.fins.set[0]!.box).toEqual(current.set[0]!.box);
  });
});
