import { describe, expect, it } from "vitest";
import { buildLayup } from "../src/layup/buildLayup";
import type { GlassInput } from "../src/layup/GlassInput";
import type { LayupPlan } from "../src/layup/LayupPlan";
import { buildWeight } from "../src/weight/buildWeight";
import { buildWeighins } from "../src/weight/weighin/buildWeighins";
import { takeWeighedFilm } from "../src/weight/weighin/takeWeighedFilm";
import type { WeighinEntry } from "../src/weight/weighin/WeighinBoard";
import type { WeighinsPlan } from "../src/weight/weighin/WeighinsPlan";
import { makeLensBoard } from "./fixtures/analyticShape";
import reference from "./reference/weight/weighins.json";
import board from "./reference/weight/wholeBoard.json";

const shape = makeLensBoard(board.body);
const glass = board.glass as GlassInput;
const layup = buildLayup({ glass, blank: board.blank }, shape);
const weight = buildWeight({ blank: board.blank }, shape, layup.value).value;
const steps = reference.steps.map(([id, coat]) => ({ id: id!, coat: coat ?? null }));

function weighIn(
  record: readonly WeighinEntry[],
  blank: { foam: string; shapedMassKg?: number } = board.blank,
) {
  const shop = { scaleStepKg: reference.scaleStepKg };
  return buildWeighins({ blank, glass, shop, record }, { layup: layup.value, weight, steps });
}
const after = (id: string, step: string, massKg: number, corrects?: string): WeighinEntry => ({
  id,
  kind: "weighed",
  after: step,
  massKg,
  ...(corrects === undefined ? {} : { corrects }),
});
const codes = (record: readonly WeighinEntry[]) => weighIn(record).findings.map(({ code }) => code);
const lastOf = (record: readonly WeighinEntry[]) => weighIn(record).value?.entries.at(-1);

describe("three weighings worked by hand", () => {
  const { value, findings } = weighIn(reference.record as WeighinEntry[]);
  const plan = value as WeighinsPlan;
  const { relative } = reference.tolerance;

  it.each(Object.entries(reference.expected))("%s agrees, bands with it", (step, expected) => {
    const entry = plan.entries.find(({ after: at }) => at === step) as unknown as Record<string, number>;
    for (const [key, truth] of Object.entries(expected)) {
      expect(Math.abs(entry[key]! / truth - 1), key).toBeLessThanOrEqual(relative);
    }
  });

  it("says what the next coat takes, and leaves the plan as it is", () => {
    expect(plan.ahead.map(({ id, by }) => [id, by])).toEqual([["fill-deck", "r5"]]);
    const [next] = plan.ahead;
    expect(Math.abs(next!.resinMassKg / reference.ahead["fill-deck"] - 1)).toBeLessThanOrEqual(relative);
    expect(next?.plannedMassKg).toBe(layup.value?.coats.find(({ id }) => id === "fill-deck")?.resinMassKg);
    expect(findings).toEqual([]);
  });

  it("gives the bottom's zones the weighed film, and leaves the deck's as planned", () => {
    const zones = (takeWeighedFilm(layup, plan).value as LayupPlan).zones;
    const filmM = plan.entries.at(-1)?.filmM;
    expect(zones.find(({ id }) => id === "bottom")?.fillThicknessM).toBeCloseTo(filmM ?? 0, 12);
    expect(zones.find(({ id }) => id === "lap-bottom")?.fillThicknessM).toBeCloseTo(0.8 * (filmM ?? 0), 12);
    const planned = layup.value?.zones.find(({ id }) => id === "deck");
    expect(zones.find(({ id }) => id === "deck")).toEqual(planned);
  });
});

describe("what the scale cannot tell", () => {
  it("starts at the shaped mass of the board file where nothing was weighed before the glass", () => {
    const { value } = weighIn([after("r1", "trim-bottom", 1.8)], { foam: "pu-48", shapedMassKg: 1.47 });
    expect(value?.entries.map(({ id }) => id)).toEqual(["blank", "r1"]);
    expect(value?.entries[1]?.gainedKg).toBeCloseTo(0.33, 12);
  });

  it("has nothing to grow from without a weighing before it", () => {
    expect(lastOf([after("r1", "trim-bottom", 1.8)])?.gainedKg).toBeNull();
  });

  it("doubts a first weighing that no such board can have, and takes one near the plan without a word", () => {
    expect(codes([after("r1", "trim-bottom", 0.4)])).toEqual(["weighins.far-off"]);
    expect(codes([after("r1", "trim-bottom", 4)])).toEqual(["weighins.far-off"]);
    expect(codes([after("r1", "trim-bottom", 1.8)])).toEqual([]);
  });

  it("takes two coats in one difference together, and says so", () => {
    const record = [after("r1", "prep", 1.47), after("r2", "trim-deck", 2.33)];
    expect(codes(record)).toEqual(["weighins.several"]);
    expect(lastOf(record)?.coats).toEqual(["laminate-bottom", "laminate-deck"]);
    expect(lastOf(record)?.keptKg).toBeGreaterThan(0);
    const films = weighIn([after("r1", "trim-deck", 2.33), after("r2", "fill-deck", 2.71)]).value;
    expect(films?.zones).toEqual([]);
  });

  it("takes a weighing after a coat as trimmed where the record has the trimming before it", () => {
    const trimmed: WeighinEntry = { id: "d", kind: "done", step: "trim-bottom" };
    const record = [after("r1", "prep", 1.47), trimmed, after("r2", "laminate-bottom", 1.8)];
    expect(codes(record)).toEqual([]);
    expect(weighIn(record).value?.ahead.length).toBeGreaterThan(0);
  });

  it("lets a later entry correct an earlier one, and the later of two at one step count", () => {
    const base = [after("r1", "prep", 1.47), after("r2", "trim-bottom", 18)];
    expect(lastOf([...base, after("r3", "trim-bottom", 1.8, "r2")])?.massKg).toBe(1.8);
    expect(codes([...base, after("r3", "trim-bottom", 1.8, "r2")])).toEqual([]);
    expect(codes([...base, after("r3", "trim-bottom", 1.8)])).toEqual(["weighins.twice"]);
  });

  it("takes a fall after sanding as what the paper took, without a word", () => {
    const record = [after("r1", "fill-deck", 2.7), after("r2", "sand-deck", 2.58)];
    expect(lastOf(record)?.gainedKg).toBeCloseTo(-0.12, 12);
    expect(codes(record)).toEqual([]);
  });

  it.each([
    ["lighter with a coat on", [after("r1", "prep", 1.47), after("r2", "trim-bottom", 1.4)], "lighter"],
    ["less than the cloth", [after("r1", "prep", 1.47), after("r2", "trim-bottom", 1.55)], "less-than-cloth"],
    [
      "heavier without a coat",
      [after("r1", "fill-deck", 2.6), after("r2", "sand-deck", 2.7)],
      "gained-without-coat",
    ],
    [
      "more resin than was mixed",
      [
        after("r1", "prep", 1.47),
        { id: "m", kind: "mixed", coat: "laminate-bottom", baseKg: 0.1, hardenerKg: 0.002 },
        after("r2", "trim-bottom", 1.8),
      ],
      "more-than-mixed",
    ],
    ["no such step", [after("r1", "varnish", 1.47)], "unknown-step"],
    ["no mass", [after("r1", "prep", Number.NaN)], "no-mass"],
    ["before trimming", [after("r1", "prep", 1.47), after("r2", "laminate-bottom", 1.8)], "untrimmed"],
    ["sanded in between", [after("r1", "trim-deck", 2.33), after("r2", "sand-deck", 2.65)], "worked-between"],
    ["far off the plan", [after("r1", "prep", 1.47), after("r2", "trim-bottom", 1.95)], "off-plan"],
  ] satisfies Array<[string, WeighinEntry[], string]>)("finds %s", (_, record, code) => {
    expect(codes(record)).toContain(`weighins.${code}`);
  });

  it("tells nothing of the next coats by a weighing that the trimming or sanding is in", () => {
    const record = [after("r1", "prep", 1.47), after("r2", "laminate-bottom", 1.8)];
    expect(weighIn(record).value?.ahead).toEqual([]);
  });

  it("waits for the plan, and is silent where nothing was weighed", () => {
    expect(weighIn([]).value).toBeNull();
    expect(weighIn([]).findings).toEqual([]);
    const waits = buildWeighins(
      { record: [after("r1", "prep", 1.4)] },
      { layup: null, weight: null, steps: null },
    );
    expect(waits.findings.map(({ code }) => code)).toEqual(["weighins.waits"]);
  });
});
