import { describe, expect, it } from "vitest";
import { kelvin, makeCoat, makeLayup } from "../../tests/fixtures/mixLayup";
import { POLYESTER } from "../constants/resins";
import { formatPhrase } from "../foundation/phrase";
import { buildMix } from "./buildMix";
import { fitGelModel } from "./fitGelModel";
import { computeSpreadByS, gelLowS } from "./GelModel";
import type { MixEntry } from "./MixEntry";
import type { MixInput } from "./MixInput";
import { mixWorking } from "./mixWorking";
import type { ShopInput } from "./ShopInput";

const at = (day: number, night = day, more: Partial<ShopInput> = {}): ShopInput => ({
  temperature: { dayK: kelvin(day), nightK: kelvin(night) },
  ...more,
});
const codes = (shop: ShopInput, resin = "polyester") =>
  buildMix({ shop }, makeLayup(resin)).findings.map(({ code, severity }) => `${severity} ${code}`);
const coatOf = (shop: ShopInput, id: string, resin = "polyester") =>
  buildMix({ shop }, makeLayup(resin)).value?.coats.find((coat) => coat.id === id);

describe("the mix without words about the shop", () => {
  it("takes a mild shop, one first-timer, and says so", () => {
    const { value, assumptions, findings } = buildMix({}, makeLayup("polyester"));
    expect(value?.coats).toHaveLength(6);
    expect(value?.dewPointK).toBeNull();
    expect(findings.filter(({ severity }) => severity !== "note")).toEqual([]);
    const paths = assumptions.map(({ path }) => path);
    for (const path of ["hours", "temperature", "resinTemperature", "people", "experience"]) {
      expect(paths).toContain(`shop.${path}`);
    }
  });

  it("waits with a note while no coat is known", () => {
    const { value, findings } = buildMix({ shop: at(18) }, null);
    expect(value).toBeNull();
    expect(findings.map(({ severity, code }) => `${severity} ${code}`)).toEqual(["note mix.no-coats"]);
  });
});

describe("a cup in colder or warmer resin", () => {
  /** CODATA 2018. */
  const GAS_J_MOL_K = 8.314462618;
  it.each(["polyester", "epoxy"])(
    "%s: gels by Arrhenius from the planned cup, about by half for 10 K",
    (resin) => {
      const { value } = buildMix({ shop: at(20, 16) }, makeLayup(resin));
      const energy = value?.resins[0]?.activationEnergyJMol ?? Number.NaN;
      for (const { gelBand, clock, resinTemperatureK } of value?.coats ?? []) {
        expect(gelBand.length).toBeGreaterThan(4);
        for (const { temperatureK, gelS, gelLowS, gelHighS } of gelBand) {
          const factor = Math.exp((energy / GAS_J_MOL_K) * (1 / temperatureK - 1 / resinTemperatureK));
          expect(gelS / (clock!.potGelS * factor)).toBeCloseTo(1, 9);
          expect(gelLowS).toBeLessThan(gelS);
          expect(gelHighS).toBeGreaterThan(gelS);
        }
        const [cold, warm] = [gelBand[0]!, gelBand.at(-1)!];
        // Common practice, no source: ten kelvins warmer halve the pot life, give or take.
        const per10K = (warm.gelS / cold.gelS) ** (10 / (warm.temperatureK - cold.temperatureK));
        expect(per10K).toBeGreaterThan(0.35);
        expect(per10K).toBeLessThan(0.7);
      }
    },
  );

  it("is told over all that the shop's air comes to, and nothing of resin too cold to set", () => {
    const { value } = buildMix({ shop: at(20, 16) }, makeLayup("polyester"));
    expect([value?.airLowK, value?.airHighK]).toEqual([kelvin(16), kelvin(20)]);
    const coldest = (night: number) =>
      buildMix({ shop: at(20, night) }, makeLayup("polyester")).value?.coats[0]?.gelBand[0]?.temperatureK;
    expect(coldest(16)).toBeCloseTo(kelvin(16), 9);
    expect(coldest(2)).toBeCloseTo(POLYESTER.leastCureTemperatureK.value, 9);
  });
});

describe("cups", () => {
  it("are several for a laminate and one batch for a fill coat", () => {
    expect(coatOf(at(18), "laminate-deck")?.cups.length).toBeGreaterThan(1);
    expect(coatOf(at(18), "fill-deck")?.cups).toHaveLength(1);
    expect(coatOf(at(18), "boxes")?.cups).toHaveLength(1);
  });

  it("follow one another, each mixed when the one before lies spread", () => {
    const cups = coatOf(at(18), "laminate-deck")?.cups ?? [];
    cups.forEach((cup, i) => {
      expect(cup.mixAtS).toBeCloseTo(i * cup.spreadS, 9);
    });
  });

  it("get wax only where the coat is sanded and the resin needs it", () => {
    const fill = coatOf(at(18), "fill-deck")?.cups[0];
    // 2.35 % by volume of 1115 kg/m³ resin: supplier's range 1.6 to 3.1 %, its middle.
    expect(fill?.waxVolumeM3).toBeCloseTo((0.0235 * fill!.baseMassKg) / 1115, 12);
    expect(coatOf(at(18), "laminate-deck")?.cups[0]?.waxVolumeM3).toBe(0);
    expect(coatOf(at(18), "fill-deck", "epoxy")?.cups[0]?.waxVolumeM3).toBe(0);
  });

  it("are fewer, or the dose stronger, for two trade hands than for one first-timer", () => {
    const trade = coatOf(at(18, 18, { people: 2, experience: "trade" }), "laminate-deck");
    const first = coatOf(at(18), "laminate-deck");
    expect(trade!.cups.length).toBeLessThanOrEqual(first!.cups.length);
    expect(trade!.hardenerRatio!).toBeGreaterThan(first!.hardenerRatio!);
  });

  it("say so where one batch is more than a cup should hold", () => {
    const layup = { ...makeLayup("polyester"), coats: [makeCoat("fill-deck", "fill", "polyester", 0.6)] };
    const { findings } = buildMix({ shop: at(16, 16, { experience: "trade" }) }, layup);
    expect(findings.map(({ code }) => code)).toContain("mix.big-batch");
  });
});

describe("a shop too cold", () => {
  it("gets no dose, no cup and no clock, and is told what to do", () => {
    const { value, findings } = buildMix({ shop: at(14, 8) }, makeLayup("polyester"));
    for (const coat of value?.coats ?? []) {
      expect(coat).toMatchObject({ hardenerRatio: null, clock: null, cups: [] });
    }
    const cold = findings.find(({ code }) => code === "mix.too-cold");
    expect(cold?.severity).toBe("blocker");
    expect(cold?.text).toContain("15 °C");
    expect(formatPhrase(cold!.says, "inch")).toContain("59 °F");
  });

  it("is warned of a night in which the film stands still before it has set", () => {
    const short = at(16, 8, { hours: { from: "15:00", to: "18:00" } });
    expect(codes(short)).toContain("warning mix.stalls");
    expect(codes(at(18, 10, { experience: "trade" }))).toContain("note mix.cold-night");
  });

  it("is told to warm the resin in a water bath", () => {
    expect(codes(at(18, 18, { resinTemperatureK: kelvin(12) }))).toContain("warning mix.cold-resin");
  });
});

describe("a shop too hot", () => {
  const hot = buildMix({ shop: at(32, 24) }, makeLayup("polyester"));

  it("refuses a batch that would gel under the brush, and never clamps the dose", () => {
    const fill = hot.value?.coats.find(({ id }) => id === "fill-deck");
    expect(fill).toMatchObject({ hardenerRatio: null, clock: null, cups: [] });
    const refused = hot.findings.find(
      ({ code, path }) => code === "mix.no-dose" && path.includes("fill-deck"),
    );
    expect(refused?.severity).toBe("blocker");
    for (const way of ["second person", "or cooler", "slower resin"]) expect(refused?.text).toContain(way);
    // 24 °C comes at the end of the hours, when nobody is there to glass.
    expect(refused?.text).not.toContain("after the start of work");
  });

  it("splits the laminate into smaller cups instead", () => {
    const cool = coatOf(at(18), "laminate-deck")!.cups.length;
    const warm = hot.value?.coats.find(({ id }) => id === "laminate-deck")?.cups.length ?? 0;
    expect(warm).toBeGreaterThan(cool);
  });

  it("marks times carried far beyond the sheet", () => {
    expect(hot.findings.map(({ code }) => code)).toContain("mix.beyond-sheet");
    expect(codes(at(18))).not.toContain("warning mix.beyond-sheet");
  });
});

describe("damp and warming air", () => {
  it("warns where the air is near its dew point, or the night falls below it", () => {
    expect(codes(at(18, 18, { humidity: 0.9 }))).toContain("warning mix.dew");
    expect(codes(at(20, 8, { humidity: 0.6 }))).toContain("warning mix.dew");
    expect(codes(at(20, 20, { humidity: 0.6 }))).toContain("note mix.dew");
    const plan = buildMix({ shop: at(20, 20, { humidity: 0.6 }) }, makeLayup("epoxy")).value;
    // Alduchov and Eskridge 1996: 20 °C and 60 % give 12.00 °C.
    expect(plan?.dewPointK).toBeCloseTo(kelvin(12), 2);
  });

  const list = (...celsius: readonly number[]) => ({
    temperature: celsius.map((c, i) => ({
      at: `2026-04-11T${String(8 + 2 * i).padStart(2, "0")}:00`,
      airK: kelvin(c),
    })),
    start: "2026-04-11T09:00",
  });

  it("warns of pinholes where a list of temperatures rises, and not where it falls", () => {
    expect(codes(list(16, 18, 22, 24, 24, 24))).toContain("warning mix.warming");
    expect(codes(list(24, 22, 20, 19, 18, 18))).not.toContain("warning mix.warming");
    expect(codes(at(18, 10))).toContain("note mix.cold-blank");
  });

  it("offers a cooler hour of the shop's own day, and says the early gel and not what is left of it", () => {
    const shop = list(33, 33, 33, 33, 20, 20);
    const hot = buildMix({ shop: { ...shop, resinTemperatureK: kelvin(33) } }, makeLayup("polyester"));
    const text = hot.findings.find(
      ({ code, path }) => code === "mix.no-dose" && path.includes("fill-deck"),
    )?.text;
    expect(text).toMatch(/resin and shop at [0-9.]+ °C, [0-9].* after the start of work/);
    const cup = { temperatureK: kelvin(33), dose: 0.01, massKg: 0.34 };
    const model = fitGelModel(POLYESTER)!;
    const minutes = (timeS: number) => Math.floor(timeS / 60 + 0.5);
    expect(text).toContain(`may gel in ${minutes(gelLowS(model, cup))} min`);
    expect(minutes(gelLowS(model, cup))).not.toBe(minutes(computeSpreadByS(model, cup)));
  });

  it("doses for the air of the hour: the first warm enough, or the calendar's", () => {
    const shop = list(11, 14, 17, 20, 22, 24);
    const seen = (hours?: ReadonlyMap<string, string>) =>
      buildMix({ shop }, makeLayup("polyester"), hours === undefined ? {} : { hours }).value!.coats[0]!;
    const first = seen();
    expect(first.temperatureK).toBeGreaterThanOrEqual(kelvin(15));
    expect(first.temperatureK).toBeLessThan(kelvin(16));
    const at = (clock: string) => seen(new Map([["laminate-bottom", `2026-04-11T${clock}`]]));
    expect(at("14:00").temperatureK).toBeCloseTo(kelvin(20.25), 9);
    expect(at("09:00").hardenerRatio).toBeNull();
  });

  it("refuses where no working hour is warm enough, however warm the night", () => {
    const shop = list(11, 12, 13, 14, 14, 14);
    const { findings, value } = buildMix({ shop }, makeLayup("polyester"));
    expect(findings.find(({ code }) => code === "mix.too-cold")?.severity).toBe("blocker");
    expect(value!.coats.every(({ hardenerRatio }) => hardenerRatio === null)).toBe(true);
  });

  it("goes by the list's air at the hour, and says nothing past its end", () => {
    const { value } = buildMix({ shop: list(20, 20, 20, 20, 20, 20) }, makeLayup("polyester"));
    const coat = value?.coats.find(({ id }) => id === "fill-deck");
    expect(coat?.temperatureK).toBeCloseTo(kelvin(20), 9);
    expect(coat?.clock?.flipS).not.toBeNull();
    expect(coat?.clock?.fullS).toBeNull();
  });
});

describe("epoxy", () => {
  it("keeps its ratio whatever the shop", () => {
    const ratios = [16, 18, 20, 24].map((day) => coatOf(at(day), "laminate-bottom", "epoxy")?.hardenerRatio);
    expect(new Set(ratios).size).toBe(1);
  });

  it("gels sooner in a larger cup and in a warmer shop", () => {
    const open = (day: number, massKg: number) => {
      const layup = { ...makeLayup("epoxy"), coats: [makeCoat("boxes", "box", "epoxy", massKg)] };
      return buildMix({ shop: at(day) }, layup).value!.coats[0]!.clock!.potGelS;
    };
    expect(open(18, 0.2)).toBeLessThan(open(18, 0.1));
    expect(open(22, 0.1)).toBeLessThan(open(18, 0.1));
  });
});

describe("sunlight resin", () => {
  it("takes no hardener and has no clock, and a note says why", () => {
    const coat = coatOf(at(12), "laminate-bottom", "sunlight");
    expect(coat).toMatchObject({ hardenerRatio: 0, clock: null });
    expect(coat?.cups[0]?.baseMassKg).toBe(coat?.cups[0]?.mixedMassKg);
    expect(codes(at(12), "sunlight")).toContain("note mix.sunlight");
  });
});

describe("windows", () => {
  it("close over wax: no recoat without sanding", () => {
    const fill = coatOf(at(18), "fill-deck")?.clock;
    expect([fill?.recoatFromS, fill?.recoatUntilS]).toEqual([null, null]);
    const laminate = coatOf(at(18), "laminate-deck")?.clock;
    expect(laminate!.recoatFromS!).toBeLessThan(laminate!.recoatUntilS!);
  });

  it("warn where the first cup's cloth is hard before the last one's is leathery", () => {
    expect(codes(at(32, 24))).toContain("warning mix.trim-window");
  });
});

describe("impossible shops", () => {
  it.each<[string, ShopInput]>([
    ["mix.shop-temperature", at(64)],
    ["mix.shop-temperature", at(Number.NaN)],
    ["mix.humidity", at(18, 18, { humidity: 60 })],
    ["mix.hours", at(18, 18, { hours: { from: "18:00", to: "09:00" } })],
    ["mix.hours", at(18, 18, { hours: { from: "nine", to: "18:00" } })],
    ["mix.resin-temperature", at(18, 18, { resinTemperatureK: 20 })],
    ["mix.people", at(18, 18, { people: 0 })],
    ["mix.temperature-list", { temperature: [{ at: "2026-04-11T09:00", airK: 291 }] }],
    ["mix.temperature-list", { temperature: [{ at: "tomorrow", airK: 291 }] }],
    [
      "mix.temperature-list",
      {
        temperature: [
          { at: "2026-04-11T09:00", airK: 291 },
          { at: "2026-04-11T12:00", airK: 291 },
        ],
        start: "2026-04-12T09:00",
      },
    ],
  ])("%s is a blocker, and there is no plan", (code, shop) => {
    const { value, findings } = buildMix({ shop }, makeLayup("polyester"));
    expect(value).toBeNull();
    expect(findings.map((found) => `${found.severity} ${found.code}`)).toEqual([`blocker ${code}`]);
  });

  it("an unknown resin is a blocker", () => {
    const { value, findings } = buildMix({ shop: at(18) }, makeLayup("marmalade"));
    expect(value).toBeNull();
    expect(new Set(findings.map(({ code }) => code))).toEqual(new Set(["mix.unknown-resin"]));
  });
});

describe("the working", () => {
  const shop = at(18, 16, { humidity: 0.6, dropsPerMl: 24 });
  const at0 = (minutes: number) => new Date(Date.UTC(2026, 3, 11, 9, minutes)).toISOString().slice(0, 16);
  const record: readonly MixEntry[] = [
    { id: "r1", kind: "mixed", coat: "laminate-deck", baseKg: 0.3, hardenerKg: 0.0045, at: at0(0) },
    { id: "r2", kind: "touched", coat: "laminate-deck", feels: "leathery", at: at0(90) },
  ];
  const boards = ["polyester", "epoxy", "sunlight"].map((resin) => {
    const layup = makeLayup(resin);
    const board: MixInput = { shop, record, glass: { tint: { laminate: 0.02, fill: 0.02 } } };
    return { board, plan: { mix: buildMix(board, layup, { outline: OUTLINE }).value, layup } };
  });

  it("is there for every number of the mix, and for nothing else", () => {
    const paths = new Set(boards.flatMap(({ plan }) => [...listNumbers(plan.mix, "mix")]));
    expect(Object.keys(mixWorking).sort()).toEqual([...paths].sort());
  });

  it("names inputs for every number that each coat has", () => {
    for (const context of boards) {
      for (const [path, ids] of listPlaces(context.plan.mix, "mix", [])) {
        expect(mixWorking[path]?.inputs(context, ids), `${path} ${ids}`).not.toEqual([]);
      }
    }
  });
});

const OUTLINE = [
  { fromTailM: 0, leftM: 0.1, rightM: 0.1 },
  { fromTailM: 1, leftM: 0.25, rightM: 0.25 },
  { fromTailM: 1.8, leftM: 0, rightM: 0 },
];

/** Every number of a part of the plan, with the ids or places on the way to it. */
function* listPlaces(
  value: unknown,
  path: string,
  ids: readonly string[],
): Generator<[string, readonly string[]]> {
  if (typeof value === "number") yield [path, ids];
  if (typeof value !== "object" || value === null) return;
  if (Array.isArray(value)) {
    for (const [i, each] of value.entries()) {
      const id = (each as { readonly id?: string }).id ?? String(i);
      yield* listPlaces(each, `${path}[]`, [...ids, id]);
    }
    return;
  }
  for (const [key, below] of Object.entries(value)) yield* listPlaces(below, `${path}.${key}`, ids);
}

function listNumbers(value: unknown, path: string): readonly string[] {
  return [...listPlaces(value, path, [])].map(([at]) => at);
}
