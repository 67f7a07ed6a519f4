import { describe, expect, it } from "vitest";
import { kelvin, makeLayup } from "../../tests/fixtures/mixLayup";
import { makeOwnResin } from "../materials/makeOwnResin";
import type { OwnPeroxideResin, OwnResinInput } from "../materials/OwnResinInput";
import { buildMix } from "./buildMix";
import { computeExposures } from "./computeExposures";
import { cupWorking } from "./cupWorking";
import { findOddPoints } from "./findOddPoints";

const point = (celsius: number, dose: number, minutes: number) => ({
  temperatureK: kelvin(celsius),
  dose,
  gelS: 60 * minutes,
});
const TABLE = [point(15, 0.01, 74), point(15, 0.02, 28), point(20, 0.01, 48), point(20, 0.02, 19)];
const sheet = (gel: OwnPeroxideResin["gel"]): OwnPeroxideResin => ({
  kind: "peroxide",
  dose: { least: 0.01, most: 0.02 },
  gel,
});
const mixOf = (resin: OwnResinInput, more = {}) =>
  buildMix(
    {
      shop: { temperature: { dayK: kelvin(18), nightK: kelvin(18) }, ...more },
      materials: { resins: { mine: resin } },
    },
    makeLayup("mine"),
  );
const codesOf = (resin: OwnResinInput, more = {}) =>
  mixOf(resin, more).findings.map(({ severity, code }) => `${severity} ${code}`);

it("tells what each kind leaves to the generic resin, and not what the sheet gave", () => {
  const fields = (resin: OwnResinInput) =>
    mixOf(resin)
      .assumptions.filter(({ path }) => path.startsWith("materials.resins.mine."))
      .map(({ path }) => path.slice("materials.resins.mine.".length));
  expect(fields(sheet(TABLE))).toEqual(expect.arrayContaining(["curedDensity", "recoat"]));
  const life = { massKg: 0.1, temperatureK: kelvin(20), durationS: 1500 };
  expect(fields({ kind: "two-part", ratioByMass: 0.45, potLife: life })).toContain("blushes");
  expect(fields({ kind: "two-part", ratioByMass: 0.45, potLife: life, blushes: false })).not.toContain(
    "blushes",
  );
  expect(fields({ kind: "sunlight" })).toContain("exposure");
  const exposure = { uvIndex: 6, durationS: 300 };
  expect(fields({ kind: "sunlight", exposure, curedDensityKgM3: 1200 })).not.toContain("exposure");
});

describe("a peroxide resin of the builder's own", () => {
  it("narrows the band that a generic sheet needs, and never under a fifth", () => {
    const generic = buildMix(
      { shop: { temperature: { dayK: kelvin(18), nightK: kelvin(18) } } },
      makeLayup("polyester"),
    ).value!.coats[0]!.clock!;
    const own = mixOf(sheet(TABLE)).value!.coats[0]!.clock!;
    expect(own.potGelHighS / own.potGelLowS).toBeLessThan(generic.potGelHighS / generic.potGelLowS);
    expect(own.potGelLowS).toBeLessThanOrEqual(0.8 * own.potGelS + 1e-9);
  });

  it("is timed by one cup alone, with a wider band", () => {
    const one = mixOf(sheet([point(18, 0.015, 30)]));
    expect(one.value!.resins[0]).toMatchObject({ exponent: 1, activationEnergyJMol: 55_000 });
    expect(one.value!.resins[0]!.points[0]!.fittedS).toBeCloseTo(1800, 6);
  });

  it("is told to keep a promoter that is added away from the peroxide", () => {
    expect(codesOf({ ...sheet(TABLE), promoter: "to be added" })).toContain("warning mix.promoter");
    expect(codesOf(sheet(TABLE))).not.toContain("warning mix.promoter");
  });

  it("keeps the plan's assumptions to its own: no word of the published sheet", () => {
    expect(mixOf(sheet(TABLE)).assumptions.some(({ value }) => value.includes("published polyester"))).toBe(
      false,
    );
  });
});

describe("gel points that contradict each other", () => {
  it("are found: warmer or stronger, and yet slower", () => {
    const slow = point(25, 0.01, 58);
    expect(findOddPoints([...TABLE, slow])).toEqual([{ slow, other: TABLE[2] }]);
    expect(findOddPoints(TABLE)).toEqual([]);
    // A cup poured twice may differ by chance.
    expect(findOddPoints([point(20, 0.01, 48), point(20.5, 0.01, 49)])).toEqual([]);
  });

  it("are a warning that names both, and a blocker where the law itself breaks", () => {
    const odd = mixOf(sheet([...TABLE, point(25, 0.01, 58)]));
    const told = odd.findings.find(({ code }) => code === "mix.gel-odd");
    expect(told?.text).toContain("25 °C");
    expect(told?.text).toContain("20 °C");
    expect(odd.value!.resins[0]!.points.filter(({ isOdd }) => isOdd)).toHaveLength(2);
    const broken = [point(15, 0.01, 30), point(20, 0.01, 40), point(25, 0.01, 50)];
    expect(codesOf(sheet(broken))).toContain("blocker mix.gel-points");
    expect(codesOf(sheet(broken)).filter((code) => code.startsWith("blocker"))).toHaveLength(1);
    expect(mixOf(sheet(broken)).value!.resins[0]).toMatchObject({ exponent: null });
  });
});

describe("a two-part resin of the builder's own", () => {
  const epoxy: OwnResinInput = {
    kind: "two-part",
    ratioByVolume: 0.5,
    hardenerDensityKgM3: 990,
    liquidDensityKgM3: 1100,
    potLife: { massKg: 0.1, temperatureK: kelvin(25), durationS: 2400 },
  };

  it("is weighed by its volumes and densities", () => {
    const [coat] = mixOf(epoxy).value!.coats;
    expect(coat!.hardenerRatio).toBeCloseTo((0.5 * 990) / 1100, 12);
    const [cup] = coat!.cups;
    expect(cup!.hardenerVolumeM3 / (cup!.baseMassKg / 1100)).toBeCloseTo(0.5, 12);
  });

  it("is warned of blush in damp air, unless its sheet says that it does not", () => {
    const damp = { humidity: 0.78 };
    expect(codesOf(epoxy, damp)).toContain("warning mix.blush");
    expect(codesOf({ ...epoxy, blushes: false }, damp)).not.toContain("warning mix.blush");
    expect(codesOf(epoxy, { humidity: 0.5 })).not.toContain("warning mix.blush");
  });
});

describe("a sunlight resin", () => {
  it("takes the same dose of light whatever the sun", () => {
    const resin = makeOwnResin("mine", { kind: "sunlight", exposure: { uvIndex: 6, durationS: 300 } });
    if (resin.kind !== "sunlight") throw new Error("another kind was made");
    for (const { uvIndex, exposureS, exposureLowS, exposureHighS } of computeExposures(resin)) {
      expect(uvIndex * exposureS).toBeCloseTo(6 * 300, 6);
      expect(exposureLowS).toBeLessThan(exposureS);
      expect(exposureHighS).toBeGreaterThan(exposureS);
    }
  });
});

describe("windows and lists", () => {
  it("hold the sheet's own recoat window in even air of the sheet's temperature", () => {
    const resin = { ...sheet(TABLE), recoatUntil: { temperatureK: kelvin(18), durationS: 36 * 3600 } };
    expect(mixOf(resin).value!.coats[0]!.clock!.recoatUntilS).toBeCloseTo(36 * 3600, 3);
  });

  it("keep what was assumed where the shop is impossible, and say where a list ends too soon", () => {
    const bad = buildMix({ shop: { humidity: 60 } }, makeLayup("polyester"));
    expect(bad.value).toBeNull();
    expect(bad.assumptions.map(({ path }) => path)).toContain("shop.temperature");
    const list = [9, 15].map((hour) => ({
      at: `2026-04-11T${String(hour).padStart(2, "0")}:00`,
      airK: kelvin(20),
    }));
    expect(codesOf(sheet(TABLE), { temperature: list })).toContain("note mix.list-ends");
  });
});

describe("what an own resin leaves out", () => {
  const pathsOf = (resin: OwnResinInput) =>
    mixOf(resin).assumptions.flatMap(({ path }) =>
      path.startsWith("materials.resins.mine.") ? [path.slice("materials.resins.mine.".length)] : [],
    );

  it("is told field by field, and what is given is not", () => {
    expect(pathsOf(sheet(TABLE)).toSorted()).toEqual([
      ...["curedDensity", "hardenerDensity", "leastTemperature", "liquidDensity"],
      ...["promoter", "recoat", "styrene", "wax"],
    ]);
    const given: OwnPeroxideResin = {
      ...sheet(TABLE),
      hardenerDensityKgM3: 1150,
      leastCureTemperatureK: kelvin(15),
      liquidDensityKgM3: 1100,
      curedDensityKgM3: 1200,
      recoatUntil: { temperatureK: kelvin(20), durationS: 86_400 },
      promoter: "in the resin",
      styreneShare: 0.35,
      waxVolumeShare: null,
    };
    expect(pathsOf(given)).toEqual([]);
  });

  it("has the source of its own kind behind the hardener's volume", () => {
    const layup = makeLayup("epoxy");
    const plan = { mix: buildMix({}, layup).value, layup };
    const working = cupWorking["mix.coats[].cups[].hardenerVolumeM3"]!;
    const sources = working.sourcesOf!({ board: {}, plan }, ["laminate-deck", "0"]);
    expect(sources).not.toContain("peroxide-density");
    expect(sources.length).toBe(1);
  });
});
