import { describe, expect, it } from "vitest";
import { readBoardFile } from "../src/readBoardFile";
import { editDemo } from "./editDemo";

const PEROXIDE = {
  kind: "peroxide",
  name: "shed polyester",
  dose: { least: "1 %", most: "2.5 %" },
  gel: [
    { temperature: "15 C", dose: "1 %", gels: "62 min" },
    { temperature: "59 F", dose: "2 %", gels: "41 min" },
  ],
  promoter: "to-add",
  wax: "none",
  styrene: "38 %",
};
const TWO_PART = {
  kind: "two-part",
  ratioByMass: "100:43",
  ratioByVolume: "2:1",
  potLife: { lasts: "25 min", mass: "100 g", temperature: "25 C" },
  recoat: { until: "24 h", at: "20 C" },
};
const SUNLIGHT = { kind: "sunlight", exposure: { uvIndex: 5, takes: "6 min" } };

function read(resins: unknown) {
  return readBoardFile(JSON.stringify(editDemo(["materials"], { resins })));
}

describe("a resin of the builder's own", () => {
  it("is read into SI, with what was left out left out", () => {
    const result = read({ "my-poly": PEROXIDE, "my-epoxy": TWO_PART, "my-sun": SUNLIGHT });
    if (!result.ok) throw new Error(JSON.stringify(result.problems));
    const resins = result.board.materials?.resins;
    const [first, second] = resins?.["my-poly"]?.kind === "peroxide" ? resins["my-poly"].gel : [];
    expect(first).toEqual({ temperatureK: 288.15, dose: 0.01, gelS: 3720 });
    expect(second?.temperatureK).toBeCloseTo(288.15, 9);
    expect(resins?.["my-poly"]).toMatchObject({ promoter: "to be added", waxVolumeShare: null });
    expect(resins?.["my-poly"]).not.toHaveProperty("liquidDensityKgM3");
    expect(resins?.["my-epoxy"]).toMatchObject({ ratioByMass: 0.43, ratioByVolume: 0.5 });
    expect(resins?.["my-sun"]).toEqual({ kind: "sunlight", exposure: { uvIndex: 5, durationS: 360 } });
  });

  it.each<[what: string, resin: unknown, path: string, words: string]>([
    ["a dose of 2 without its sign", { ...PEROXIDE, dose: { least: 1, most: 2 } }, "dose.most", "2 %"],
    ["a dose as a fraction", { ...PEROXIDE, dose: { least: "1 %", most: 0.02 } }, "dose.most", "2 %"],
    [
      "a fraction with a per cent sign",
      { ...PEROXIDE, dose: { least: "0.01 %", most: "2 %" } },
      "dose.least",
      "in per cent",
    ],
    ["a dose of 200 %", { ...PEROXIDE, dose: { least: "1 %", most: "200 %" } }, "dose.most", "more than 4 %"],
    ["a range upside down", { ...PEROXIDE, dose: { least: "2 %", most: "1 %" } }, "dose.most", "swapped"],
    ["no line of the gel table", { ...PEROXIDE, gel: [] }, "gel", "at least one line"],
    [
      "Fahrenheit without a unit",
      { ...PEROXIDE, gel: [{ temperature: "64", dose: "1 %", gels: "40 min" }] },
      "gel[0].temperature",
      "64 C or 64 F",
    ],
    [
      "Fahrenheit called Celsius",
      { ...PEROXIDE, gel: [{ temperature: "77 C", dose: "1 %", gels: "40 min" }] },
      "gel[0].temperature",
      "is the unit right?",
    ],
    ["an inverted ratio", { ...TWO_PART, ratioByMass: "43:100" }, "ratioByMass", 'was "100:43" meant?'],
    ["a ratio as a number", { ...TWO_PART, ratioByMass: 0.43 }, "ratioByMass", '"100:45"'],
    ["no ratio at all", { ...TWO_PART, ratioByMass: undefined, ratioByVolume: undefined }, "", "ratioByMass"],
    [
      "ratios of two sheets",
      { ...TWO_PART, ratioByMass: "100:43", ratioByVolume: "4:1" },
      "ratioByVolume",
      "belong together",
    ],
    ["a kind that is none", { kind: "polyester" }, "kind", '"peroxide"'],
  ])("%s is refused with what would be right", (_, resin, path, words) => {
    const result = read({ mine: resin });
    if (result.ok) throw new Error("was taken");
    const place = `materials.resins.mine${path === "" ? "" : `.${path}`}`;
    const found = result.problems.find((problem) => problem.path === place);
    expect(found?.message, JSON.stringify(result.problems)).toContain(words);
  });
});

describe("a cup in the record", () => {
  it("with more hardener than base is refused", () => {
    const entry = { id: "r9", kind: "mixed", coat: "fill-bottom", base: "4.6 g", hardener: "310 g" };
    const result = readBoardFile(JSON.stringify(editDemo(["record"], [entry])));
    if (result.ok) throw new Error("was taken");
    expect(result.problems[0]).toMatchObject({ path: "record[0].hardener" });
    expect(result.problems[0]?.message).toContain("swapped");
  });
});

describe("tint and drops", () => {
  it("are read", () => {
    const tinted = readBoardFile(JSON.stringify(editDemo(["glass", "tint"], { laminate: "1.5 %" })));
    expect(tinted.ok && tinted.board.glass?.tint).toEqual({ laminate: 0.015 });
    const drops = readBoardFile(JSON.stringify(editDemo(["shop", "dropsPerMl"], 24)));
    expect(drops.ok && drops.board.shop?.dropsPerMl).toBe(24);
  });

  it.each([
    [["glass", "tint"], { laminate: 1.5 }, "1.5 %"],
    [["shop", "dropsPerMl"], "24 drops", "a number without a unit"],
  ])("at %s are refused without their unit", (at, set, words) => {
    const result = readBoardFile(JSON.stringify(editDemo(at, set)));
    if (result.ok) throw new Error("was taken");
    expect(result.problems[0]?.message).toContain(words);
  });
});
