import { describe, expect, it } from "vitest";
import { finsetShape } from "../../tests/fixtures/finsetShape";
import { buildFinset } from "./buildFinset";
import type { AsSetInput, FinsInput } from "./FinsInput";

const shape = finsetShape({ lengthM: 1.8, left: () => 0.2, right: () => 0.2 });
const overM = 0.006;
/** Planned: trailing 0.28 up and 0.17 out, leading √(0.11² − 0.006²) farther up and 0.164 out. */
const leadingUpM = 0.28 + Math.sqrt(0.11 ** 2 - overM ** 2);
const fins = (asSet: readonly AsSetInput[]): FinsInput => ({
  arrangement: "tri",
  set: [
    {
      fin: "front",
      fromTailM: 0.28,
      fromRailM: 0.03,
      baseM: 0.11,
      toe: { kind: "overBase", overM },
      cantRad: 0.1,
    },
    { fin: "centre", fromTailM: 0.09, baseM: 0.11 },
  ],
  asSet,
});

interface Off {
  readonly trailing?: readonly [alongM: number, outM: number];
  readonly leading?: readonly [alongM: number, outM: number];
  readonly cantRad?: number;
}

const asSet = (
  side: "left" | "right",
  { trailing = [0, 0], leading = [0, 0], cantRad }: Off,
): AsSetInput => ({
  fin: "front",
  side,
  on: "fill",
  trailing: { fromTailM: 0.28 + trailing[0], fromCentrelineM: 0.17 + trailing[1] },
  leading: { fromTailM: leadingUpM + leading[0], fromCentrelineM: 0.164 + leading[1] },
  ...(cantRad === undefined ? {} : { cantRad }),
});
const build = (...measured: readonly AsSetInput[]) => buildFinset(fins(measured), shape);
const one = (off: Off) => build(asSet("left", off)).value!.asSet[0]!;

describe("fins as set, against the plan", () => {
  it("are good where they stand on their marks", () => {
    const { value, findings } = build(asSet("left", {}), asSet("right", {}));
    expect(value?.asSet.every(({ withinTolerance }) => withinTolerance)).toBe(true);
    expect(value?.asSetPairs).toMatchObject([{ id: "front", withinTolerance: true }]);
    expect(findings.filter(({ code }) => code === "finset.as-set-good").length).toBe(2);
  });

  it("turn by atan(Δacross/Δalong): 2 mm at the leading end of 110 mm is about a degree", () => {
    const plan = one({ leading: [0, -0.002] });
    expect(plan.leadingErrorM).toBeCloseTo(0.002, 12);
    expect(plan.toeErrorRad).toBeCloseTo(Math.atan2(0.008, leadingUpM - 0.28) - Math.asin(overM / 0.11), 12);
    expect((plan.toeErrorRad! * 180) / Math.PI).toBeCloseTo(1.04, 1);
    expect(plan).toMatchObject({ withinTolerance: false, on: "fill" });
  });

  it.each([
    [
      "one end: that end only",
      { leading: [0, -0.002] },
      { end: "leading", alongM: 0, trailingAcrossM: 0, leadingAcrossM: 0.002 },
    ],
    [
      "one end out, the other a little: the little one stays",
      { trailing: [0, 0.0014], leading: [0, 0.0009] },
      { end: "trailing", alongM: 0, trailingAcrossM: -0.0014, leadingAcrossM: 0 },
    ],
    [
      "both ends",
      { trailing: [0, 0.003], leading: [0, 0.002] },
      { end: "both", alongM: 0, trailingAcrossM: -0.003, leadingAcrossM: -0.002 },
    ],
    [
      "a slide",
      { trailing: [0.004, 0], leading: [0.004, 0] },
      { end: "both", alongM: -0.004, trailingAcrossM: 0, leadingAcrossM: 0 },
    ],
    [
      "nothing within the tolerance",
      { trailing: [0.0005, 0.0005], leading: [0, 0.0009] },
      { end: "none", alongM: 0, trailingAcrossM: 0, leadingAcrossM: 0 },
    ],
  ] as const)("are corrected by the smallest move: %s", (_name, off, expected) => {
    const { correction } = one(off);
    expect(correction.end).toBe(expected.end);
    for (const key of ["alongM", "trailingAcrossM", "leadingAcrossM"] as const)
      expect(correction[key], key).toBeCloseTo(expected[key], 12);
  });

  it("say what to move, in words", () => {
    const { findings } = build(asSet("left", { leading: [0, -0.002] }));
    expect(findings.find(({ code }) => code === "finset.as-set-out")?.text).toBe(
      "the front-left fin is out: move its leading end 2.0 mm outward (its toe is 1.04° too much)",
    );
  });

  it("hold the cant to a degree", () => {
    expect(one({ cantRad: 0.11 })).toMatchObject({ withinTolerance: true });
    const leaning = one({ cantRad: 0.13 });
    expect(leaning.withinTolerance).toBe(false);
    expect(leaning.cantErrorRad).toBeCloseTo(0.03, 12);
    expect(leaning.correction.cantRad).toBeCloseTo(-0.03, 12);
  });

  it("are held against each other, even where each side is good", () => {
    const { value, findings } = build(
      asSet("left", { leading: [0, 0.0009] }),
      asSet("right", { leading: [0, -0.0008] }),
    );
    expect(value?.asSet.every(({ withinTolerance }) => withinTolerance)).toBe(true);
    expect(value?.asSetPairs[0]?.leadingDifferM).toBeCloseTo(0.0017, 12);
    expect(value?.asSetPairs[0]?.withinTolerance).toBe(false);
    expect(findings.find(({ code }) => code === "finset.as-set-sides")?.text).toMatch(
      /move the leading end of the front-left fin 0\.90* mm inward$/,
    );
  });

  it("follow the tolerance of the board file", () => {
    const loose = buildFinset(
      { ...fins([asSet("left", { leading: [0, -0.002] })]), toleranceM: 0.0021 },
      shape,
    );
    expect(loose.value?.asSet[0]?.withinTolerance).toBe(true);
  });

  it("have no verdict before both ends are measured", () => {
    const { value, findings } = build({ fin: "front", side: "left", trailing: { fromCentrelineM: 0.17 } });
    expect(value?.asSet[0]).toMatchObject({
      trailingErrorM: 0,
      leadingErrorM: null,
      toeErrorRad: null,
      withinTolerance: false,
      correction: { end: "unknown" },
    });
    expect(findings.find(({ code }) => code === "finset.as-set-incomplete")?.text).toContain("leading mark");
  });

  it("turn over the stated base where the distances from the tail were not read", () => {
    const { value } = build({
      fin: "front",
      side: "left",
      trailing: { fromCentrelineM: 0.171 },
      leading: { fromCentrelineM: 0.164 },
    });
    expect(value?.asSet[0]?.toeErrorRad).toBeCloseTo(Math.asin(0.007 / 0.11) - Math.asin(0.006 / 0.11), 12);
  });

  it.each([
    [
      "a fin that is not there",
      { fin: "rear", side: "left" } as const,
      "finset.as-set-unknown",
      /no mark for a fin named "rear"/,
    ],
    ["no side", { fin: "front" }, "finset.as-set-unknown", /"left" or "right"/],
    [
      "no number",
      { fin: "front", side: "left", cantRad: Number.NaN } as const,
      "finset.as-set-bad",
      /is no number/,
    ],
  ])("are warned of: %s", (_name, measured, code, words) => {
    const { value, findings } = build(measured);
    expect(value?.asSet).toEqual([]);
    expect(findings.find((finding) => finding.code === code)?.text).toMatch(words);
  });
});
