import { describe, expect, it } from "vitest";
import { bowedOutline, finsetShape } from "../../tests/fixtures/finsetShape";
import { buildFinset } from "./buildFinset";
import type { FinInput, FinsInput } from "./FinsInput";

const shape = finsetShape({ lengthM: 1.8, left: bowedOutline(1.8, 0.25), right: bowedOutline(1.8, 0.25) });
const slab = finsetShape({ lengthM: 1.8, left: () => 0.2, right: () => 0.2, thicknessM: () => 0.03 });
const front: FinInput = {
  fin: "front",
  fromTailM: 0.28,
  fromRailM: 0.03,
  baseM: 0.11,
  toe: { kind: "aimBesideNose", offsetM: 0.07 },
  cantRad: 0.1,
};
const rear: FinInput = { ...front, fin: "rear", fromTailM: 0.14, fromRailM: 0.05, baseM: 0.1 };
const box = { lengthM: 0.13, widthM: 0.02, depthM: 0.018 };
const twin = (more: Partial<FinInput>, fins: Partial<FinsInput> = {}): FinsInput => ({
  arrangement: "twin",
  set: [{ ...front, ...more }],
  ...fins,
});

const blockers = (fins: FinsInput, board = shape) =>
  buildFinset(fins, board).findings.filter(({ severity }) => severity === "blocker");

describe("what cannot be set out", () => {
  it("lets a mark stand on the rail itself, at the very tail", () => {
    const fins = twin({ fromTailM: 0, fromRailM: 0 }, { fromTailBy: "straight" });
    expect(buildFinset(fins, slab).value?.marks.length).toBe(2);
  });

  it.each([
    [
      "a leading mark outside the outline",
      twin({ toe: { kind: "angle", angleRad: -0.5 } }),
      "finset.outside-outline",
      "base",
      /outside the outline.*move it in/,
    ],
    [
      "a mark over the centreline",
      twin({ fromRailM: 0.4 }),
      "finset.over-centreline",
      "fromRail",
      /over the centreline/,
    ],
    [
      "a base longer than the distance to the nose",
      twin({ baseM: 1.6, toe: { kind: "angle", angleRad: 0 } }),
      "finset.base-past-nose",
      "base",
      /longer than/,
    ],
    [
      "a mark beyond the board",
      twin({ fromTailM: 2 }),
      "finset.outside-outline",
      "fromTail",
      /not on the board/,
    ],
    [
      "an aim behind the fin",
      twin({ toe: { kind: "aimBeyondNose", beyondM: -1.5 } }),
      "finset.aim-behind-fin",
      "toe",
      /not ahead of the fin's own front/,
    ],
    [
      "toe over more than the base",
      twin({ toe: { kind: "overBase", overM: 0.2 } }),
      "finset.toe-absurd",
      "toe",
      /as much as the base is long/,
    ],
    [
      "an absurd toe",
      twin({ toe: { kind: "angle", angleRad: 0.9 } }),
      "finset.toe-absurd",
      "toe",
      /within a few degrees/,
    ],
    ["a cant of 60°", twin({ cantRad: Math.PI / 3 }), "finset.cant-absurd", "cant", /60.0°.*slip of the pen/],
    ["a base of nought", twin({ baseM: 0 }), "finset.bad-length", "base", /more than nought/],
    [
      "a distance that is no number",
      twin({ fromTailM: Number.NaN }),
      "finset.bad-length",
      "fromTail",
      /no number/,
    ],
    [
      "a front fin without its distance from the rail",
      { arrangement: "twin", set: [{ fin: "front", fromTailM: 0.3, baseM: 0.1 }] } as FinsInput,
      "finset.no-from-rail",
      "fromRail",
      /distance from the rail/,
    ],
    [
      "a line that meets nothing",
      twin({ toe: { kind: "meets", fin: "rear" } }),
      "finset.meets-nothing",
      "toe",
      /no such fin/,
    ],
    [
      "a line that meets itself",
      twin({ toe: { kind: "meets", fin: "front" } }),
      "finset.meets-nothing",
      "toe",
      /circle/,
    ],
  ] as const)("says so of %s", (_name, fins, code, field, words) => {
    const { value } = buildFinset(fins, shape);
    const [first, ...others] = blockers(fins);
    expect(first).toMatchObject({ code, path: `fins.set[0].${field}` });
    expect(first?.text).toMatch(words);
    expect(others).toEqual([]);
    expect(value).toBeNull();
  });

  it("keeps the fins that can be set out", () => {
    const fins: FinsInput = { arrangement: "quad", set: [front, { ...rear, cantRad: 1 }] };
    expect(buildFinset(fins, shape).value?.marks.map(({ id }) => id)).toEqual(["front-left", "front-right"]);
    expect(blockers(fins).map(({ path }) => path)).toEqual(["fins.set[1].cant"]);
  });

  it("names a fin that is missing, one given twice, and one that does not belong", () => {
    expect(blockers({ arrangement: "quad", set: [front] })[0]?.text).toBe(
      "a quad has a rear fin, and none is given",
    );
    expect(blockers({ arrangement: "twin", set: [front, front] })[0]).toMatchObject({
      code: "finset.fin-twice",
      path: "fins.set[1].fin",
    });
    const extra = buildFinset({ arrangement: "twin", set: [front, rear] }, shape);
    expect(extra.findings.find(({ code }) => code === "finset.fin-extra")?.severity).toBe("warning");
    expect(extra.value?.marks.length).toBe(4);
  });

  it("stops two fins that go round in a circle", () => {
    const set = [
      { ...front, toe: { kind: "meets", fin: "rear" } as const },
      { ...rear, toe: { kind: "meets", fin: "front" } as const },
    ];
    expect(blockers({ arrangement: "quad", set }).every(({ code }) => code === "finset.meets-nothing")).toBe(
      true,
    );
  });

  it("stops a box deeper than the board, and says how deep it may be", () => {
    const [first, ...others] = blockers(twin({ cantRad: 0, box: { ...box, depthM: 0.04 } }), slab);
    expect(first).toMatchObject({ code: "finset.box-too-deep", path: "fins.set[0].box.depth" });
    expect(first?.text).toContain("come out of the deck by 10.0 mm: use a box at most 24 mm deep");
    expect(others).toEqual([]);
  });

  it("stops two boxes in one place", () => {
    const set = [
      { ...front, box },
      { ...rear, fromTailM: 0.25, fromRailM: 0.035, box },
    ];
    expect(blockers({ arrangement: "quad", set }).map(({ code }) => code)).toEqual(["finset.boxes-overlap"]);
  });

  it("stops a measure from the crotch of a tail that has none", () => {
    const quad = { arrangement: "quad", set: [front, rear], fromTailOf: "crotch" } as const;
    expect(blockers(quad).filter(({ code }) => code === "finset.no-crotch")).toHaveLength(1);
    expect(blockers(twin({}, { fromTailOf: "crotch" }))[0]).toMatchObject({
      code: "finset.no-crotch",
      path: "fins.fromTailOf",
    });
  });

  it("stops a mark in the notch of a swallow tail", () => {
    const swallow = finsetShape({
      lengthM: 1.8,
      left: () => 0.2,
      right: () => 0.2,
      notch: { halfWidthM: 0.06, depthM: 0.1 },
    });
    const centre = { arrangement: "single", set: [{ fin: "centre", fromTailM: 0.05, baseM: 0.1 }] } as const;
    expect(blockers(centre, swallow)[0]?.text).toMatch(/in the tail's notch/);
  });

  it("has no value without fins, and only notes it, since nothing was asked", () => {
    for (const board of [shape, null])
      expect(buildFinset(undefined, board)).toMatchObject({
        value: null,
        findings: [{ code: "finset.none", severity: "note" }],
      });
  });

  it("has no value, and a blocker, without a board or without a fin", () => {
    expect(buildFinset(twin({}), null)).toMatchObject({
      value: null,
      findings: [{ code: "finset.no-shape", severity: "blocker" }],
    });
    expect(buildFinset({ arrangement: "twin", set: [] }, shape).value).toBeNull();
  });
});

describe("what nobody gave", () => {
  it("is said to be assumed, and only that", () => {
    const bare = buildFinset(
      { arrangement: "twin", set: [{ fin: "front", fromTailM: 0.3, fromRailM: 0.03, baseM: 0.1 }] },
      shape,
    );
    expect(bare.assumptions.map(({ path }) => path)).toEqual([
      "fins.sides",
      "fins.boxes",
      "fins.fromTailBy",
      "fins.fromTailOf",
      "fins.tolerance",
      "fins.set[0].fromRailBy",
      "fins.set[0].toe",
      "fins.set[0].cant",
      "finset.marks[].bottomTiltRad",
      "finset.marks[].trueCantRad",
      "finset.verify.checks[].angles",
    ]);
    const full = buildFinset(
      {
        arrangement: "twin",
        sides: "rail",
        boxes: "glassed-on",
        fromTailBy: "straight",
        fromTailOf: "tips",
        toleranceM: 0.002,
        set: [{ ...front, fromRailBy: "square-to-rail" }],
      },
      shape,
    );
    expect(full.assumptions.map(({ path }) => path)).toEqual([
      "finset.marks[].bottomTiltRad",
      "finset.marks[].trueCantRad",
      "finset.verify.checks[].angles",
      "finset.verify.glassedOn[]",
      "finset.verify.glassedOn[].cureBeforeLoadS",
    ]);
    expect(full.value).toMatchObject({ sides: "rail", boxes: "glassed-on", toleranceM: 0.002 });
  });

  it("of boxes and plug is said by the surface that is there", () => {
    const assumed = (fins: Partial<FinsInput>) =>
      buildFinset({ ...twin({ box }), ...fins }, slab).assumptions.filter(({ path }) =>
        /^finset\.(verify\.(boxes|glassed)|leashPlug)/.test(path),
      );
    const after = assumed({ boxes: "after-fill" });
    expect(after.map(({ path }) => path.replace("finset.verify.boxes[].", ""))).toEqual([
      "proudM",
      "cutOut",
      "cureBeforeLoadS",
    ]);
    expect(after[0]?.value).toBe("0.80 mm above the fill coat");
    expect(assumed({ boxes: "before-glass" }).map(({ value }) => value)).toContain(
      "25 mm beyond the box all round",
    );
    expect(assumed({ boxes: "after-fill", verify: { on: "foam" } })[0]?.value).toBe("0.50 mm above the foam");
    const plug = { fromTailM: 0.08, fromCentrelineM: 0.02, side: "left" } as const;
    expect(assumed({ leashPlug: plug }).map(({ path }) => path)).toContain("finset.leashPlug.pullTestN");
  });
});
