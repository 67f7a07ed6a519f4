import { describe, expect, it } from "vitest";
import { finsetShape } from "../../tests/fixtures/finsetShape";
import { CANT_GAUGE } from "../constants/finLimits";
import { LEASH_PLUG } from "../constants/fittings";
import { radFromDegrees } from "../foundation/units";
import { buildFinset } from "./buildFinset";
import type { FinInput, FinsInput, ToeInput } from "./FinsInput";

const slab = finsetShape({ lengthM: 1.8, left: () => 0.2, right: () => 0.2 });
const box = { lengthM: 0.118, widthM: 0.021, depthM: 0.018 };
const front: FinInput = { fin: "front", fromTailM: 0.28, fromRailM: 0.03, baseM: 0.11, box };
const centre: FinInput = { fin: "centre", fromTailM: 0.09, baseM: 0.11, box };
const tri = (changed: Partial<FinInput> = {}, more: Partial<FinsInput> = {}): FinsInput => ({
  arrangement: "tri",
  set: [{ ...front, ...changed }, centre],
  ...more,
});
const found = (fins: FinsInput, code: string) =>
  buildFinset(fins, slab).findings.filter((finding) => finding.code === code);

describe("what is questioned", () => {
  it.each<readonly [string, ToeInput, string]>([
    ["25 degrees", { kind: "angle", angleRad: radFromDegrees(25) }, "points in by 25.0°"],
    ["3 degrees out", { kind: "angle", angleRad: radFromDegrees(-3) }, "points out by 3.0°"],
    ["an aim 20 in on the other side", { kind: "aimBesideNose", offsetM: -0.508 }, "points in by 24.0°"],
  ])("a toe of %s, once for both sides", (_name, toe, words) => {
    const told = found(tri({ toe }), "finset.toe-unusual");
    expect(told.map(({ severity, path }) => [severity, path])).toEqual([["warning", "fins.set[0].toe"]]);
    expect(told[0]?.text).toContain(words);
  });

  it.each<readonly [string, ToeInput | undefined]>([
    ["none", undefined],
    ["parallel", { kind: "aimBesideNose", offsetM: 0.17 }],
    ["a string 2 1/2 in beside the nose", { kind: "aimBesideNose", offsetM: 0.0635 }],
  ])("not a toe that is %s", (_name, toe) => {
    expect(found(tri(toe && { toe }), "finset.toe-unusual")).toEqual([]);
  });

  it("any cant of a fin on the centreline", () => {
    const leant = tri({}, { set: [front, { ...centre, cantRad: radFromDegrees(-20) }] });
    expect(found(leant, "finset.cant-unusual")[0]).toMatchObject({
      severity: "warning",
      path: "fins.set[1].cant",
    });
    expect(found(leant, "finset.cant-unusual")[0]?.text).toContain("lean 20.0° to the right");
    expect(found(tri({}, { set: [front, { ...centre, cantRad: 0 }] }), "finset.cant-unusual")).toEqual([]);
  });

  it("a cant inwards, as inwards", () => {
    expect(found(tri({ cantRad: radFromDegrees(-6) }), "finset.cant-unusual")[0]?.text).toContain(
      "lean 6.0° inwards",
    );
  });

  it("a tolerance that lets through what can be felt", () => {
    expect(found(tri({}, { toleranceM: 0.02 }), "finset.tolerance-loose")[0]).toMatchObject({
      severity: "warning",
      path: "fins.tolerance",
    });
    expect(found(tri({}, { toleranceM: 0.002 }), "finset.tolerance-loose")).toEqual([]);
  });
});

describe("the rule for the sides", () => {
  it("goes by the tolerance that is given", () => {
    const lopsided = finsetShape({ lengthM: 1.8, left: () => 0.2, right: () => 0.1985 });
    const says = (toleranceM: number) =>
      buildFinset(tri({}, { toleranceM }), lopsided).findings.find(
        ({ code }) => code === "finset.sides-recommended",
      )?.text;
    expect(says(0.001)).toContain("the sides differ by 1.5 mm");
    expect(says(0.002)).toContain("all three rules come to the same");
  });
});

describe("boxes", () => {
  it("reach into a swallow's notch, and that is said as such", () => {
    const swallow = finsetShape({
      lengthM: 1.8,
      left: () => 0.2,
      right: () => 0.2,
      notch: { halfWidthM: 0.05, depthM: 0.08 },
    });
    const { findings } = buildFinset(tri({}, { set: [front, { ...centre, fromTailM: 0.083 }] }), swallow);
    const notch = findings.filter(({ code }) => code === "finset.box-in-notch");
    expect(notch.map(({ severity, path }) => [severity, path])).toEqual([["blocker", "fins.set[1].box"]]);
    expect(findings.map(({ code }) => code)).not.toContain("finset.box-outside");
  });

  it("are left aside where the fins are glassed on, with one note", () => {
    const { value, findings } = buildFinset(tri({}, { boxes: "glassed-on" }), slab);
    expect(value?.marks.every((mark) => mark.box === null)).toBe(true);
    expect(value?.clearances.every(({ foamBesideM }) => foamBesideM === null)).toBe(true);
    expect(findings.filter(({ code }) => code === "finset.box-glassed-on")).toHaveLength(1);
    expect(value?.verify.cautions).toContain("glass-dust");
    const told = buildFinset(
      tri({}, { boxes: "glassed-on", verify: { confirmed: [{ check: "bottom-up" }] } }),
      slab,
    ).findings.map(({ text }) => text);
    expect(told.join()).not.toMatch(/router|cut yet/);
  });
});

describe("a leash plug without a size", () => {
  it("has its room reckoned for a common one, and says so", () => {
    const plug = { fromTailM: 0.2, fromCentrelineM: 0.1, side: "left" } as const;
    const built = (more: object) => buildFinset(tri({}, { leashPlug: { ...plug, ...more } }), slab);
    const bare = built({});
    expect(bare.value?.leashPlug).toEqual(built({ diameterM: LEASH_PLUG.diameterM }).value?.leashPlug);
    expect(bare.value?.leashPlug?.toRailM).toBeCloseTo(0.1 - LEASH_PLUG.diameterM / 2, 9);
    expect(bare.assumptions.map(({ path }) => path)).toContain("fins.leashPlug.diameter");
  });
});

describe("a diagonal", () => {
  // Worked by hand: the mark stands 0.17 m out and 0.28 m up a board of 1.8 m.
  it("says what a millimetre at its mark changes it by", () => {
    const [pair] = buildFinset(tri(), slab).value?.pairs ?? [];
    const worthOf = (id: string) => pair?.diagonals.find((diagonal) => diagonal.id === id);
    expect(worthOf("nose-trailing")?.acrossWorthRatio).toBeCloseTo(0.17 / Math.hypot(1.52, 0.17), 12);
    expect(worthOf("tail-trailing")?.acrossWorthRatio).toBeCloseTo(0.17 / Math.hypot(0.28, 0.17), 12);
    expect(worthOf("tail-trailing")?.alongWorthRatio).toBeCloseTo(0.28 / Math.hypot(0.28, 0.17), 12);
  });

  it("starts at the crotch of a swallow, and is called so", () => {
    const swallow = finsetShape({
      lengthM: 1.8,
      left: () => 0.2,
      right: () => 0.2,
      notch: { halfWidthM: 0.05, depthM: 0.08 },
    });
    const { value } = buildFinset({ arrangement: "twin", set: [front] }, swallow);
    expect(value?.pairs[0]?.diagonals.map(({ from }) => from)).toEqual(["nose", "nose", "crotch", "crotch"]);
    const check = value?.verify.checks.find(({ id }) => id === "diagonal-front-tail-trailing");
    expect(check?.from).toBe("crotch");
    expect(check?.how).toContain("from the crotch");
  });
});

describe("what is taken", () => {
  it("is said of the gauge's width and of what lean and depth are held to", () => {
    const values = buildFinset(tri(), slab).assumptions.map(({ value }) => value);
    expect(values).toContain(`a gauge ${2000 * CANT_GAUGE.halfWidthM} mm wide`);
    expect(values).toContain("1.0°");
    expect(values).toContain("0.50 mm");
  });
});
