import { describe, expect, it } from "vitest";
import { type FinsetShapeSpec, finsetShape } from "../../tests/fixtures/finsetShape";
import { buildFinset } from "./buildFinset";
import type { FinsInput, SidesRule } from "./FinsInput";

const fins = (sides: SidesRule): FinsInput => ({
  arrangement: "twin",
  sides,
  set: [
    {
      fin: "front",
      fromTailM: 0.28,
      fromRailM: 0.03,
      baseM: 0.11,
      toe: { kind: "aimBesideNose", offsetM: 0.07 },
    },
  ],
});
const build = (sides: SidesRule, spec: Partial<FinsetShapeSpec>) =>
  buildFinset(fins(sides), finsetShape({ lengthM: 1.8, left: () => 0.2, right: () => 0.2, ...spec }));
const told = ({ findings }: ReturnType<typeof build>) =>
  findings.find(({ code }) => code === "finset.sides-recommended");

/** Both rails parallel to a line 3 mm left of the stringer: the stringer is off. */
const stringerOff = { left: () => 0.203, right: () => 0.197, shiftM: 0.003 };
/** The same widths, but no other line fits better: the left side bulges at the fins only. */
const lopsided = { left: (xM: number) => 0.2 + 0.006 * Math.exp(-(((xM - 0.28) / 0.2) ** 2)) };

describe("the rule recommended for the two sides", () => {
  it("is average, as a note, on a true board", () => {
    for (const sides of ["average", "rail", "centreline"] as const) {
      const stage = build(sides, {});
      expect(stage.value?.recommendedSides).toBe("average");
      expect(told(stage)).toMatchObject({ severity: "note", path: "fins.sides" });
    }
  });

  it("is the best-fit centreline where the sides agree about it and not about the stringer", () => {
    const stage = build("average", stringerOff);
    expect(stage.value?.recommendedSides).toBe("centreline");
    expect(told(stage)?.severity).toBe("warning");
    expect(told(stage)?.text).toContain(
      "the sides differ by 6.0 mm at the fins about the stringer, but only by 0 mm",
    );
    expect(told(build("centreline", stringerOff))?.severity).toBe("note");
  });

  it("is average where the outline itself is fuller on one side", () => {
    const stage = build("rail", lopsided);
    expect(stage.value?.recommendedSides).toBe("average");
    expect(told(stage)?.severity).toBe("warning");
    expect(told(stage)?.text).toContain("the outline is fuller on one side");
  });

  it("is average where the readings cannot tell the best-fit centreline from the stringer", () => {
    const unsure = { ...stringerOff, left: () => 0.2008, right: () => 0.1994, shiftM: 0.0004 };
    const stage = build("average", unsure);
    expect(stage.value?.recommendedSides).toBe("average");
    expect(told(stage)).toMatchObject({ severity: "note" });
    expect(told(stage)?.text).toContain("cannot tell that line from the stringer");
  });

  it("is shown beside the other two, with what each side reads", () => {
    const compared = build("average", stringerOff).value!.sidesCompared;
    expect(compared.map(({ id }) => id)).toEqual(["average", "rail", "centreline"]);
    const [average, rail, centreline] = compared.map(({ pairs }) => pairs[0]!);
    expect(average!.fromRailDifferM).toBeCloseTo(0.006, 12);
    expect(average!.fromStringerDifferM).toBeCloseTo(0, 12);
    expect(rail!.fromRailDifferM).toBeCloseTo(0, 12);
    expect(rail!.fromStringerDifferM).toBeCloseTo(0.006, 12);
    expect(centreline!.fromRailDifferM).toBeCloseTo(0, 12);
    expect(centreline!.fromStringerDifferM).toBeCloseTo(0.006, 12);
    expect(rail!.leftToeRad).toBeGreaterThan(rail!.rightToeRad);
    expect(average).toMatchObject({ leftMovesM: 0, rightMovesM: 0 });
    expect(rail!.leftMovesM).toBeCloseTo(0.003, 12);
    expect(rail!.rightMovesM).toBeCloseTo(-0.003, 12);
  });
});

describe("diagonals", () => {
  it("are equal on a pair set by the average and differ on one set each by its own rail", () => {
    const differ = (sides: SidesRule) =>
      build(sides, stringerOff).value!.pairs[0]!.diagonals.map(({ differM }) => differM);
    for (const differM of differ("average")) expect(differM).toBe(0);
    for (const differM of differ("rail")) expect(Math.abs(differM)).toBeGreaterThan(1e-4);
  });

  it("by tape are the hypotenuse of the unrolled bottom: R·angle along an arc, and the offset", () => {
    const radiusM = 4;
    const stage = build("average", { rockerRadiusM: radiusM });
    const [nose] = stage.value!.pairs[0]!.diagonals;
    const mark = stage.value!.marks[0]!.trailing;
    const angleAt = (xM: number) => Math.asin((xM - 0.9) / radiusM);
    const alongM = radiusM * (angleAt(1.8) - angleAt(mark.fromTailM));
    expect(nose?.leftTapeM).toBeCloseTo(Math.hypot(alongM, 0.17), 12);
    expect(nose?.leftM).toBeCloseTo(Math.hypot(1.8 - mark.fromTailM, 0.17), 12);
  });

  it("start from the crotch of a swallow tail, which is on the board", () => {
    const swallow = build("average", { notch: { halfWidthM: 0.06, depthM: 0.09 } }).value!;
    const [mark] = swallow.marks;
    const tail = swallow.pairs[0]!.diagonals.find(({ id }) => id === "tail-trailing")!;
    expect(mark!.trailing.fromTailM).toBeCloseTo(0.28, 12);
    expect(tail.leftM).toBeCloseTo(Math.hypot(0.28 - 0.09, 0.17), 9);
  });

  it("warn of a twist that leans the two sides differently", () => {
    const twisted = build("average", { twistRad: 0.06 });
    expect(twisted.findings.find(({ code }) => code === "finset.twist-in-cant")?.severity).toBe("warning");
    expect(
      build("average", { twistRad: 0.01 }).findings.some(({ code }) => code === "finset.twist-in-cant"),
    ).toBe(false);
  });
});
