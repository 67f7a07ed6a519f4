import { describe, expect, it } from "vitest";
import { finsetShape } from "../../tests/fixtures/finsetShape";
import { buildBoxFrame } from "./BoxFrame";
import { buildFinset } from "./buildFinset";
import type { FinInput, FinsInput, LeashPlugInput } from "./FinsInput";
import { buildFootprint, computeGapM } from "./footprint";
import { buildSetOutLine } from "./SetOutLine";
import { takeFinDefaults } from "./takeFinDefaults";

const slab = finsetShape({ lengthM: 1.8, left: () => 0.2, right: () => 0.2, thicknessM: () => 0.05 });
const box = { lengthM: 0.13, widthM: 0.02, depthM: 0.02, behindTrailingM: 0.01 };
const front: FinInput = { fin: "front", fromTailM: 0.3, fromRailM: 0.04, baseM: 0.11, cantRad: 0, box };
const set = (fins: readonly FinInput[], more: Partial<FinsInput> = {}): FinsInput => ({
  arrangement: fins.length === 1 ? "twin" : "quad",
  set: fins,
  ...more,
});
const build = (fins: FinsInput, shape = slab) => buildFinset(fins, shape);
const clearanceOf = (fins: FinsInput, id: string, shape = slab) =>
  build(fins, shape).value!.clearances.find((clearance) => clearance.id === id)!;
const codes = (fins: FinsInput, shape = slab) => build(fins, shape).findings.map(({ code }) => code);

describe("room around a box that stands square, by subtraction", () => {
  const clearance = clearanceOf(set([front]), "front-left");

  it("is the slab's thickness less the depth above, and the slab's rest beside", () => {
    expect(build(set([front])).value!.marks[0]!.foamUnderM).toBeCloseTo(0.03, 12);
    expect(clearance.foamBesideM).toBeCloseTo(0.03, 5);
  });

  it("says of a box that comes out of the deck only that, and not that its floor has no foam beside it", () => {
    const deep = codes(set([{ ...front, box: { ...box, depthM: 0.06 } }]));
    expect(deep).toContain("finset.box-too-deep");
    expect(deep).not.toContain("finset.foam-beside");
  });

  it("counts half the width off the rail's and the stringer's distance", () => {
    expect(clearance.toRailM).toBeCloseTo(0.03, 9);
    expect(clearance.toStringerM).toBeCloseTo(0.15, 12);
  });

  it("leans its floor in by the depth times the sine of the cant", () => {
    const leaning = clearanceOf(set([{ ...front, cantRad: 0.1 }]), "front-left");
    expect(leaning.toStringerM).toBeCloseTo(0.16 - 0.01 * Math.cos(0.1) - 0.02 * Math.sin(0.1), 12);
  });

  it("reaches from box to box along the board", () => {
    const rear = { ...front, fin: "rear", fromTailM: 0.14 };
    // The rear box ends 0.14 - 0.01 + 0.13 up, the front one starts 0.3 - 0.01 up.
    expect(clearanceOf(set([front, rear]), "front-left")).toMatchObject({ next: "rear-left" });
    expect(clearanceOf(set([front, rear]), "front-left").toNextM).toBeCloseTo(0.03, 12);
  });
});

describe("a bottom that is not flat", () => {
  it("bows under the base by the sagitta of its arc, R − √(R² − (b/2)²) at half length", () => {
    const arc = finsetShape({ lengthM: 1.8, left: () => 0.2, right: () => 0.2, rockerRadiusM: 3 });
    const bare: FinInput = { fin: "front", fromTailM: 0.845, fromRailM: 0.04, baseM: 0.11, cantRad: 0 };
    const clearance = clearanceOf(set([bare], { fromTailBy: "straight" }), "front-left", arc);
    expect(clearance.bowUnderBaseM).toBeCloseTo(-(3 - Math.sqrt(9 - 0.055 ** 2)), 9);
    expect(clearance).toMatchObject({ foamBesideM: null });
  });

  it("leaves (D/2)/sin β beside a box that stands square to a bottom rising outwards by β, at half its depth D", () => {
    const vee = finsetShape({
      lengthM: 1.8,
      left: () => 0.2,
      right: () => 0.2,
      thicknessM: () => 0.2,
      veeSlope: 0.5,
    });
    const { foamBesideM } = clearanceOf(set([front]), "front-left", vee);
    expect(foamBesideM).toBeCloseTo(0.01 / Math.sin(Math.atan(0.5)), 5);
  });
});

describe("too little room", () => {
  it.each([
    [
      "over the box",
      { ...front, box: { ...box, depthM: 0.046 } },
      "finset.foam-above",
      /only 4.0 mm of foam is left over the front fin's box.*2.0 mm shallower/,
    ],
    [
      "to the rail",
      { ...front, fromRailM: 0.019 },
      "finset.box-to-rail",
      /within 9.0 mm of the rail.*move the fin 3.0 mm inward/,
    ],
    [
      "to the stringer",
      { ...front, fromRailM: 0.187 },
      "finset.box-to-stringer",
      /within 3.0 mm of the middle of the stringer/,
    ],
  ] as const)(
    "%s is a warning with the figure and the cure, once for both sides",
    (_name, fin, code, words) => {
      const found = build(set([fin])).findings.filter((finding) => finding.code === code);
      expect(found.length).toBe(1);
      expect(found[0]).toMatchObject({ severity: "warning" });
      expect(found[0]?.text).toMatch(words);
    },
  );

  it("between two boxes is told once", () => {
    const rear = { ...front, fin: "rear", fromTailM: 0.16 };
    const found = build(set([front, rear])).findings.filter(({ code }) => code === "finset.box-to-box");
    expect(found.map(({ text }) => text)).toEqual([
      "only 10.0 mm is left between the front and rear fins, where 15.0 mm is common practice: move one of them 5.0 mm along the board",
    ]);
  });

  it("is told by side on a board that differs by side", () => {
    const lopsided = finsetShape({ lengthM: 1.8, left: () => 0.203, right: () => 0.197 });
    const found = build(set([{ ...front, fromRailM: 0.02 }]), lopsided).findings;
    const texts = found.filter(({ code }) => code === "finset.box-to-rail").map(({ text }) => text);
    expect(texts.length).toBe(1);
    expect(texts[0]).toContain("front-right");
  });

  it("of a pair that meets over the stringer is cured across the board", () => {
    const found = build(set([{ ...front, fromRailM: 0.195 }])).findings.find(
      ({ code }) => code === "finset.boxes-overlap",
    );
    expect(found?.text).toBe("the two front fins are in one place: set both nearer to their rails");
  });

  it("says by how much two boxes in one place have to be pulled apart", () => {
    // The rear box ends 0.2 - 0.01 + 0.13 up, 30 mm past where the front one starts.
    const rear = { ...front, fin: "rear", fromTailM: 0.2 };
    const found = build(set([front, rear])).findings.find(({ code }) => code === "finset.boxes-overlap");
    expect(found?.text).toBe(
      "the front and rear fins are in one place: move one of them 45.0 mm along the board",
    );
  });

  it("stops a box over the edge of the board", () => {
    expect(codes(set([{ ...front, fromRailM: 0.005 }]))).toContain("finset.box-outside");
    expect(codes(set([{ ...front, fromTailM: 0.005 }], { fromTailBy: "straight" }))).toContain(
      "finset.box-outside",
    );
  });
});

describe("leash plug", () => {
  const plug = {
    fromTailM: 0.08,
    fromCentrelineM: 0.02,
    side: "left",
    diameterM: 0.028,
    depthM: 0.02,
  } as const;
  const rear = { ...front, fin: "rear", fromTailM: 0.06, fromRailM: 0.17 };
  const build2 = (more: Partial<LeashPlugInput>, fins: readonly FinInput[] = [front]) =>
    build(set(fins, { leashPlug: { ...plug, ...more }, fromTailBy: "straight" }));

  it("keeps its distances, by subtraction on a slab", () => {
    const { leashPlug } = build2({}).value!;
    expect(leashPlug).toMatchObject({
      side: "left",
      fromTailM: 0.08,
      fromCentrelineM: 0.02,
      box: "front-left",
    });
    expect(leashPlug?.toStringerM).toBeCloseTo(0.006, 12);
    expect(leashPlug?.toRailM).toBeCloseTo(0.2 - 0.02 - 0.014, 9);
    expect(leashPlug?.foamUnderM).toBeCloseTo(0.03, 12);
    // The front box starts 0.29 up and its inner edge stands 0.15 out.
    expect(leashPlug?.toBoxM).toBeCloseTo(Math.hypot(0.29 - 0.08, 0.15 - 0.02) - 0.014, 9);
  });

  it("is held against the box beneath it through the foam", () => {
    const { value, findings } = build2({ fromTailM: 0.1, fromCentrelineM: 0.03 }, [front, rear]);
    expect(value?.leashPlug?.box).toBe("rear-left");
    expect(value?.leashPlug?.toBoxM).toBeCloseTo(0.05 - 0.02 - 0.02, 12);
    expect(findings.filter(({ code }) => code.startsWith("finset.plug"))).toEqual([]);
    const deep = build2({ fromTailM: 0.1, fromCentrelineM: 0.03, depthM: 0.031 }, [front, rear]);
    expect(deep.findings.find(({ code }) => code === "finset.plug-in-box")).toMatchObject({
      severity: "blocker",
    });
  });

  it.each([
    [{ depthM: 0.06 }, "finset.plug-too-deep", "blocker"],
    [{ depthM: 0.046 }, "finset.plug-foam", "warning"],
    [{ fromCentrelineM: 0.175 }, "finset.plug-to-rail", "warning"],
    [{ fromCentrelineM: 0.015 }, "finset.plug-to-stringer", "warning"],
    [{ fromCentrelineM: 0.3 }, "finset.plug-outside", "blocker"],
    [{ depthM: Number.NaN }, "finset.bad-length", "blocker"],
  ] as const)("says so of %o", (more, code, severity) => {
    expect(build2(more).findings.find((finding) => finding.code === code)).toMatchObject({
      severity,
    });
  });
});

describe("the gap between two footprints, by hand", () => {
  const at = (points: ReadonlyArray<readonly [number, number]>) => points.map(([xM, yM]) => ({ xM, yM }));
  const square = at([
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ]);

  it.each([
    [
      "side by side",
      at([
        [1.5, 0],
        [2, 0],
        [2, 1],
        [1.5, 1],
      ]),
      0.5,
    ],
    [
      "corner to corner",
      at([
        [4, 5],
        [5, 5],
        [5, 6],
        [4, 6],
      ]),
      5,
    ],
    [
      "one inside the other",
      at([
        [0.4, 0.4],
        [0.6, 0.4],
        [0.6, 0.6],
        [0.4, 0.6],
      ]),
      0,
    ],
    [
      "crossed",
      at([
        [-1, 0.4],
        [2, 0.4],
        [2, 0.6],
        [-1, 0.6],
      ]),
      0,
    ],
    [
      "a bare base beside",
      at([
        [2, -1],
        [2, -1],
        [2, 2],
        [2, 2],
      ]),
      1,
    ],
  ])("%s", (_name, other, gapM) => {
    expect(computeGapM(square, other)).toBeCloseTo(gapM, 12);
    expect(computeGapM(other, square)).toBeCloseTo(gapM, 12);
  });

  it("turns with the toe", () => {
    const line = buildSetOutLine(slab, "average");
    const [filledFront] = takeFinDefaults({ arrangement: "twin", set: [front] }).fins.set;
    if (filledFront === undefined) throw new Error("no fin");
    const spot = {
      id: "front-left",
      fin: filledFront,
      path: "",
      side: "left",
      uM: 0.3,
      vM: 0.16,
      toeRad: 0.05,
    } as const;
    const [rearInner, , , frontInner] = buildFootprint(buildBoxFrame(line, spot));
    expect(Math.atan2(rearInner!.yM - frontInner!.yM, frontInner!.xM - rearInner!.xM)).toBeCloseTo(0.05, 12);
  });
});
