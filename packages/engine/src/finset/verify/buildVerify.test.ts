import { describe, expect, it } from "vitest";
import { finsetShape } from "../../../tests/fixtures/finsetShape";
import { readAsPlanned } from "../../../tests/fixtures/readAsPlanned";
import { CAUTIONS } from "../../constants/cautions";
import { buildFinset } from "../buildFinset";
import type { FinInput, FinsInput } from "../FinsInput";
import { computeMostBitM } from "./buildBoxSettings";
import type { VerifyInput } from "./VerifyInput";
import type { VerifyPlan } from "./VerifyPlan";

const slab = finsetShape({ lengthM: 1.8, left: () => 0.2, right: () => 0.2, thicknessM: () => 0.06 });
const box = { lengthM: 0.118, widthM: 0.021, depthM: 0.018 };
const front: FinInput = { fin: "front", fromTailM: 0.28, fromRailM: 0.03, baseM: 0.11, cantRad: 0.1, box };
const centre: FinInput = { fin: "centre", fromTailM: 0.09, baseM: 0.11, box };
const bare: FinInput = { fin: "bare", fromTailM: 0.5, baseM: 0.08 };
const tri = (verify?: VerifyInput, more: Partial<FinsInput> = {}): FinsInput => ({
  arrangement: "tri",
  set: [front, centre],
  ...(verify && { verify }),
  ...more,
});
const gate = (fins: FinsInput): VerifyPlan => buildFinset(fins, slab).value!.verify;
const told = (fins: FinsInput) =>
  buildFinset(fins, slab).findings.filter(({ code }) => code.startsWith("finset.verify"));

describe("the stop before the router", () => {
  it("goes through its checks in the order of the trade", () => {
    const matters = gate(tri()).checks.map(({ matter }) => matter);
    expect([...new Set(matters)]).toEqual([
      "bottom-up",
      "nose-away",
      "left-named",
      "string",
      "diagonals",
      "marks",
      "sides",
      "cant",
      "dry-fit",
      "depth-stop",
      "proud",
      "slots-taped",
    ]);
    const ids = gate(tri()).checks.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toContain("string-front-left");
    expect(ids).not.toContain("string-centre");
    expect(ids).toContain("marks-centre");
  });

  it("has bases to fit and no boxes where the fins are glassed on", () => {
    const { checks, boxes, glassedOn, surface } = gate(tri(undefined, { boxes: "glassed-on" }));
    expect(checks.map(({ id }) => id)).toContain("base-fits-front");
    expect(
      checks.some(({ matter }) => ["dry-fit", "depth-stop", "proud", "slots-taped"].includes(matter)),
    ).toBe(false);
    expect(boxes).toEqual([]);
    expect(glassedOn.map(({ id }) => id)).toEqual(["front-left", "front-right", "centre"]);
    expect(surface).toBe("laminate");
  });

  it("names cautions that there are", () => {
    for (const boxes of ["before-glass", "after-laminate", "after-fill", "glassed-on"] as const)
      for (const id of gate(tri(undefined, { boxes })).cautions) expect(CAUTIONS).toHaveProperty(id);
  });

  it("waits, without a word, while nothing is read", () => {
    expect(gate(tri())).toMatchObject({ verdict: "open", next: "bottom-up" });
    expect(told(tri())).toEqual([]);
  });

  it("says how many checks are still to be made once the first is", () => {
    const fins = tri({ confirmed: [{ check: "bottom-up" }] });
    expect(gate(fins)).toMatchObject({ verdict: "open", next: "nose-away" });
    expect(told(fins).map(({ text }) => text)).toEqual([
      "no cut yet: 19 of the checks before the router are still to be made, first nose-away",
    ]);
  });

  it("goes once all is confirmed and read as planned, the diagonals to the leading marks left out", () => {
    const fins = readAsPlanned(slab, tri());
    const { verdict, next, checks } = gate(fins);
    expect({ verdict, next }).toEqual({ verdict: "go", next: null });
    expect(checks.filter(({ state }) => state === "open").map(({ id }) => id)).toEqual([
      "diagonal-front-tail-leading",
    ]);
    expect(told(fins).map(({ code }) => code)).toEqual(["finset.verify-go"]);
  });

  it("goes for glassed-on fins and for a box without a size too", () => {
    expect(gate(readAsPlanned(slab, tri(undefined, { boxes: "glassed-on" }))).verdict).toBe("go");
    const { box: _, ...unsized } = front;
    const { depthStops: __, ...verify } = readAsPlanned(slab, { arrangement: "twin", set: [unsized] })
      .verify!;
    const fins = { ...readAsPlanned(slab, { arrangement: "twin", set: [unsized] }), verify };
    expect(gate(fins).checks.find(({ id }) => id === "depth-stop-front")?.kind).toBe("check");
    expect(gate(fins).verdict).toBe("go");
    expect(told(fins).map(({ code }) => code)).toEqual(["finset.verify-go"]);
  });

  it("does not go while a blocker stands against the set", () => {
    const deep = { ...front, box: { ...box, depthM: 0.07 } };
    const fins = readAsPlanned(slab, tri(undefined, { set: [deep, centre] }));
    expect(gate(fins)).toMatchObject({ verdict: "blocked", next: null });
    expect(told(fins).map(({ code }) => code)).toEqual(["finset.verify-blocked"]);
  });
});

describe("a check made for other figures", () => {
  const made = readAsPlanned(slab, tri());
  const stateOf = (fins: FinsInput, id: string) => gate(fins).checks.find((check) => check.id === id)?.state;
  const withBox = (bigger: Partial<typeof box>): FinsInput => ({
    ...made,
    set: [{ ...front, box: { ...box, ...bigger } }, centre],
  });

  it("is made again where the box is another one", () => {
    const fins = withBox({ lengthM: 0.15, widthM: 0.03 });
    expect(gate(fins)).toMatchObject({ verdict: "open", next: "dry-fit-front" });
    expect(stateOf(fins, "dry-fit-centre")).toBe("good");
    expect(told(fins)[0]).toMatchObject({
      code: "finset.verify-stale",
      severity: "warning",
      path: "finset.verify.checks[dry-fit-front]",
      text: "Box tried on scrap, front: it was made for a pocket 121.0 mm long, now 153.0 mm; a pocket 24.0 mm wide, now 33.0 mm: make it again",
    });
  });

  it("is made again where the surface or the cant is another one", () => {
    expect(stateOf({ ...made, verify: { ...made.verify, on: "laminate" } }, "dry-fit-front")).toBe("open");
    const leant = { ...made, set: [{ ...front, cantRad: 0.13 }, centre] };
    expect(stateOf(leant, "dry-fit-front")).toBe("open");
    expect(stateOf(leant, "bottom-up")).toBe("good");
  });

  it("counts for the figures that read the same", () => {
    expect(gate(withBox({ lengthM: box.lengthM + 4e-5 })).verdict).toBe("go");
  });

  it("does not count where it is not said what for", () => {
    const verify = {
      ...made.verify,
      confirmed: (made.verify?.confirmed ?? []).map(({ check }) => ({ check })),
    };
    expect(stateOf({ ...made, verify }, "dry-fit-front")).toBe("open");
    expect(told({ ...made, verify })[0]?.text).toContain("not said what figures");
  });

  it("is so for a stop and a height too, where they say what for", () => {
    const depthStops = (made.verify?.depthStops ?? []).map((stop) => ({
      ...stop,
      madeFor: { on: "foam" as const },
    }));
    expect(stateOf({ ...made, verify: { ...made.verify, depthStops } }, "depth-stop-front")).toBe("open");
    const proud = (made.verify?.proud ?? []).map((height) => ({
      ...height,
      madeFor: { on: "fill" as const, lengthM: 0.2, widthM: 0.024, depthM: 0.0187 },
    }));
    expect(stateOf({ ...made, verify: { ...made.verify, proud } }, "proud-front")).toBe("open");
  });
});

describe("what is out", () => {
  const words = (change: VerifyInput) => {
    const fins = readAsPlanned(slab, tri());
    return told({ ...fins, verify: { ...fins.verify, ...change } }).map(
      ({ path, text }) => `${path}: ${text}`,
    );
  };

  it.each<readonly [string, VerifyInput, string]>([
    [
      "a string",
      { strings: [{ fin: "front", side: "left", besideNoseM: 0.15 }] },
      "finset.verify.checks[string-front-left]: the string of the front-left fin crosses 20.0 mm too far inward beside the nose, which is 0.75° too much toe: move its leading mark 1.4 mm outward",
    ],
    [
      "a diagonal",
      { diagonals: [{ fin: "front", from: "nose", to: "trailing", leftM: 1.532, rightM: 1.529 }] },
      "finset.verify.checks[diagonal-front-nose-trailing]: from the nose tip to the trailing marks of the front fins the left diagonal is 3.0 mm too long against the right: measure both marks again from the tail and from the centreline, since one of them has slipped",
    ],
    [
      "a cant block",
      { cantBlocks: [{ fin: "front", cantRad: 0.05 }] },
      "finset.verify.checks[cant-front]: the cant block of the front fins leans 2.9°, for 5.7°: lean it 2.9° more",
    ],
    [
      "a depth stop",
      { depthStops: [{ fin: "centre", depthM: 0.022 }] },
      "finset.verify.checks[depth-stop-centre]: the depth stop for the centre fin's box stands at 22.0 mm from the fill coat, for 18.7 mm: set it 3.3 mm shallower; as it stands 38 mm of foam is left over it",
    ],
    [
      "a box that stands below the surface",
      { proud: [{ fin: "front", heightM: -0.001 }] },
      "finset.verify.checks[proud-front]: the front fin's box stands 1.0 mm below the fill coat, for 0.80 mm above it: set the depth stop 1.8 mm shallower",
    ],
  ])("%s is told with its cure", (_name, change, text) => {
    const [first, last] = words(change);
    expect(first).toBe(text);
    expect(last).toMatch(/finset.verify: no cut yet: /);
  });

  it("is the same for the mark that asSet finds out, which is told there once", () => {
    const fins = readAsPlanned(slab, tri());
    const [first, ...others] = fins.asSet ?? [];
    const moved = { ...first!, leading: { ...first!.leading, fromCentrelineM: 0.175 } };
    const out = { ...fins, asSet: [moved, ...others] };
    const { verdict, next, checks } = gate(out);
    expect({ verdict, next }).toEqual({ verdict: "correct", next: "marks-front-left" });
    const { correction } = checks.find(({ id }) => id === "marks-front-left")!;
    expect(correction).toMatchObject({ end: "leading", trailingAcrossM: 0 });
    expect(correction?.leadingAcrossM).toBeCloseTo(-0.005, 12);
    const codes = buildFinset(out, slab).findings.map(({ code }) => code);
    expect(codes.filter((code) => code === "finset.as-set-out")).toHaveLength(1);
    expect(codes).not.toContain("finset.verify-out");
  });
});

describe("readings that can be held against nothing", () => {
  it.each<readonly [string, VerifyInput, string, string]>([
    [
      "a fin that is not there",
      { proud: [{ fin: "rear", heightM: 0 }] },
      "fins.verify.proud[0].fin",
      "no mark",
    ],
    [
      "a string to a centre fin",
      { strings: [{ fin: "centre", side: "left", besideNoseM: 0 }] },
      "fins.verify.strings[0].fin",
      "stands on the centreline",
    ],
    [
      "no number",
      { depthStops: [{ fin: "front", depthM: Number.NaN }] },
      "fins.verify.depthStops[0]",
      "no number",
    ],
    [
      "a check that there is not",
      { confirmed: [{ check: "nose-up" }] },
      "fins.verify.confirmed[0]",
      "no such check",
    ],
    [
      "a reading that is confirmed",
      { confirmed: [{ check: "depth-stop-front" }] },
      "fins.verify.confirmed[0]",
      "give its figure",
    ],
    [
      "a depth stop for a box without a size",
      { depthStops: [{ fin: "bare", depthM: 0.02 }] },
      "fins.verify.depthStops[0].fin",
      "no size is given",
    ],
    ["another surface than the boxes'", { on: "foam" }, "fins.verify.on", "router stands on the fill"],
  ])("%s is a warning, and nothing is done with it", (_name, verify, path, words) => {
    const fins = tri(verify, { set: [front, centre, bare] });
    const [first] = told(fins);
    expect(first).toMatchObject({ severity: "warning", path });
    expect(first?.text).toContain(words);
    expect(gate(fins).checks.every(({ state }) => state === "open")).toBe(true);
  });
});

describe("the thickest bit", () => {
  /** Whether the corner of a box, standing in by the gap from both walls, lies inside a pocket whose corner is rounded. */
  const isClear = (radiusM: number, gapM: number) =>
    gapM >= radiusM || Math.hypot(radiusM - gapM, radiusM - gapM) <= radiusM;

  it.each([0.001, 0.0015, 0.0025])("for a room of %f m is the last that lets the corner in", (gapM) => {
    const mostM = computeMostBitM(1, gapM);
    const tried = Array.from({ length: 4000 }, (_, i) => i * 1e-5).filter((bitM) => isClear(bitM / 2, gapM));
    expect(Math.abs(Math.max(...tried) - mostM)).toBeLessThanOrEqual(1e-5);
  });
});
