import { describe, expect, it } from "vitest";
import { describeKey } from "./describeKey";
import { formatPhrase, type Phrase } from "./phrase";

describe("describeKey", () => {
  it.each([
    ["fromTailTapeM", "length"],
    ["volumeLowM3", "volume"],
    ["deckAreaM2", "area"],
    ["glassArealMassKgM2", "arealMass"],
    ["resinMassHighKg", "mass"],
    ["toeRad", "angle"],
    ["dewPointK", "temperature"],
    ["trimFromS", "duration"],
    ["hardenerRatio", "fraction"],
    ["resinRatioLow", "fraction"],
    ["fibreVolumeFraction", "fraction"],
    ["deckFullness", "count"],
  ])("%s is a quantity of %s", (key, dimension) => {
    expect(describeKey(key, 0.1)).toMatchObject({ dimension, value: 0.1 });
  });

  it("tells a force in newtons", () => {
    expect(describeKey("pullTestN", 147.2)).toBe("147 N");
  });

  it("tells an angle for each metre as degrees for each millimetre", () => {
    // 1 mm over a base of 114.3 mm turns it by asin(1/114.3), 0.50 degrees (trigonometry).
    expect(formatPhrase(describeKey("baseEndRadPerM", 1 / 0.1143) as Phrase, "mm")).toBe("0.50° for each mm");
  });
});
