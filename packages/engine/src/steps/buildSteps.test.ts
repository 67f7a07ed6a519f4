import { describe, expect, it } from "vitest";
import { finsetShape } from "../../tests/fixtures/finsetShape";
import { kelvin, makeLayup } from "../../tests/fixtures/mixLayup";
import { listNumericPaths } from "../../tests/fixtures/numericLeaves";
import { buildFinset } from "../finset/buildFinset";
import type { FinsInput } from "../finset/FinsInput";
import { buildMix } from "../mix/buildMix";
import { buildSteps } from "./buildSteps";
import { buildWater } from "./buildWater";
import type { RecordEntry } from "./RecordEntry";
import type { StepsInput } from "./StepsInput";
import { stepsWorking } from "./stepsWorking";

const shop = { temperature: { dayK: kelvin(18), nightK: kelvin(18) } };
const layup = makeLayup("polyester");
const mix = buildMix({ shop }, layup).value;

function board(record: readonly RecordEntry[] = [], more: Partial<StepsInput> = {}): StepsInput {
  return {
    survey: { lengthM: 1.8 },
    blank: { foam: "pu-48" },
    glass: { resin: "polyester", finish: "sanded" },
    fins: { arrangement: "tri", set: [], leashPlug: { fromTailM: 0.08, fromCentrelineM: 0.02 } },
    shop,
    record,
    ...more,
  };
}

const through = (id: string, shows: "weave" | "glass" | "foam", more: object = {}): RecordEntry => ({
  id,
  kind: "sand-through",
  face: "deck",
  side: "left",
  fromTailM: 0.4,
  fromCentrelineM: 0.18,
  sizeM: 0.03,
  shows,
  ...more,
});
const stepsOf = (input: StepsInput) => buildSteps(input, { finset: null, layup, mix });
const slab = finsetShape({
  lengthM: 1.8,
  left: () => 0.2,
  right: () => 0.2,
  thicknessM: () => 0.05,
});
const NOTHING = { finset: null, layup: null, mix: null };
const ids = (input: StepsInput) => (stepsOf(input).value ?? []).map(({ id }) => id);
const step = (id: string, input = board()) => stepsOf(input).value!.find((candidate) => candidate.id === id)!;
const codes = (input: StepsInput) =>
  stepsOf(input).findings.map(({ severity, code }) => `${severity} ${code}`);

describe("waits", () => {
  it("come from the film's clock of the coat", () => {
    const clock = mix!.coats.find(({ id }) => id === "laminate-bottom")!.clock!;
    expect(step("laminate-bottom").waitS).toBe(clock.trimFromS);
    expect(step("laps-bottom").needs.find((need) => need.step === "laminate-bottom")?.waitS).toBe(
      clock.flipS,
    );
    const boxes = mix!.coats.find(({ id }) => id === "boxes")!.clock!;
    expect(step("sand-bottom").needs.find((need) => need.step === "boxes")?.waitS).toBe(boxes.sandableS);
  });

  it("are unknown, and not made up, where the mix could not be", () => {
    const steps = buildSteps(board(), { finset: null, layup, mix: null }).value!;
    const find = (id: string) => steps.find((candidate) => candidate.id === id)!;
    expect(find("laminate-bottom").waitS).toBeNull();
    expect(find("cure-out").waitS).toBeNull();
    expect(find("prep").waitS).toBe(0);
  });

  it("end with what the slowest coat still lacks of its cure", () => {
    const fill = mix!.coats.find(({ id }) => id === "leash-plug")!.clock!;
    const waitS = step("cure-out").waitS!;
    expect(waitS).toBeGreaterThan(0);
    const slowest = Math.max(...mix!.coats.map(({ clock }) => clock!.fullS!));
    expect(waitS).toBeLessThan(slowest);
    expect(waitS).toBeGreaterThan(
      fill.fullS! - fill.sandableS! - step("sand-deck").handsOnS - step("sand-bottom").handsOnS - 1,
    );
  });
});

describe("before a box, a base or the plug bears load", () => {
  const noLoad = (id: string, input: StepsInput, of: typeof mix) =>
    buildSteps(input, { finset: null, layup, mix: of }).value!.find((row) => row.id === id)!.noLoadS;
  const fullOf = (of: typeof mix, coat: string) => of!.coats.find(({ id }) => id === coat)!.clock!.fullS!;

  it("it waits a day, or the resin's full cure where that comes later", () => {
    const hasty = structuredClone(mix!);
    for (const coat of hasty.coats) Object.assign(coat.clock!, { fullS: 6 * 3600 });
    const slow = structuredClone(mix!);
    for (const coat of slow.coats) Object.assign(coat.clock!, { fullS: 60 * 3600 });
    for (const id of ["boxes", "leash-plug"]) {
      expect(noLoad(id, board(), hasty)).toBe(24 * 3600);
      expect(noLoad(id, board(), slow)).toBe(60 * 3600);
      expect(noLoad(id, board(), mix)).toBe(Math.max(24 * 3600, fullOf(mix, id)));
      expect(noLoad(id, board(), null)).toBeNull();
    }
    expect(noLoad("fill-deck", board(), mix)).toBeNull();
    const glassedOn = board([], { fins: { arrangement: "twin", set: [], boxes: "glassed-on" } });
    expect(noLoad("boxes", glassedOn, hasty)).toBe(24 * 3600);
  });

  it("the cure-out lasts at least that long after the last of them", () => {
    const hasty = structuredClone(mix!);
    for (const coat of hasty.coats)
      Object.assign(coat.clock!, { fullS: 6 * 3600, sandableS: 3 * 3600, flipS: 2 * 3600 });
    const steps = buildSteps(board(), { finset: null, layup, mix: hasty }).value!;
    const after = steps.slice(steps.findIndex(({ id }) => id === "leash-plug") + 1);
    const spentS = after.reduce(
      (sumS, { handsOnS, needs }) => sumS + handsOnS + Math.max(0, ...needs.map(({ waitS }) => waitS ?? 0)),
      0,
    );
    const restS = steps.find(({ id }) => id === "cure-out")!.waitS!;
    expect(restS + spentS).toBeGreaterThanOrEqual(24 * 3600);
    expect(restS).toBeGreaterThan(12 * 3600);
  });
});

describe("the words at a step", () => {
  const words = (more: Partial<StepsInput>) =>
    stepsOf(board([], more)).value!.flatMap(({ title, needs, cautions }) => [
      title,
      ...needs.map(({ because }) => because),
      ...cautions,
    ]);

  it("speak of no box on a board whose fins are glassed on, and of no plug where it has none", () => {
    const all = words({ fins: { arrangement: "twin", set: [], boxes: "glassed-on" } }).join("\n");
    expect(all).not.toMatch(/\bbox(es)?\b|\bplug\b(?! before)|router/i);
    expect(all).toMatch(/glassed on out of line/);
    const pocketed = words({}).join("\n");
    expect(pocketed).toMatch(/boxes flush/);
    expect(pocketed).toMatch(/plug pulled/);
  });

  it("speak of neither on a board without fins", () => {
    const { fins: _, ...bare } = board();
    const all = buildSteps(bare, { finset: null, layup, mix }).value!.map(({ title }) => title);
    expect(all.join("\n")).not.toMatch(/box|fin(s|\b)|plug/i);
  });
});

describe("the gate before the router", () => {
  const done: RecordEntry = { id: "r1", kind: "done", step: "set-boxes" };
  const told = (verdict: "go" | "open" | "correct" | "blocked", record: readonly RecordEntry[]) => {
    const fins: FinsInput = {
      arrangement: "twin",
      set: [{ fin: "front", fromTailM: 0.3, fromRailM: 0.04, baseM: 0.11, cantRad: 0 }],
    };
    const finset = buildFinset(fins, slab).value!;
    const judged = { ...finset, verify: { ...finset.verify, verdict } };
    const input = board(record, { fins });
    return buildSteps(input, { finset: judged, layup, mix })
      .findings.filter(({ code }) => code === "steps.set-before-go")
      .map(({ severity, path }) => `${severity} ${path}`);
  };

  it("is missed where pockets are marked cut before it said go", () => {
    expect(told("open", [done])).toEqual(["warning record[r1].step"]);
    expect(told("correct", [done])).toEqual(["warning record[r1].step"]);
    expect(told("go", [done])).toEqual([]);
    expect(told("open", [])).toEqual([]);
  });
});

describe("cautions", () => {
  const text = (id: string, input = board(), of = layup) =>
    buildSteps(input, { finset: null, layup: of, mix })
      .value!.find((candidate) => candidate.id === id)!
      .cautions.join(" ");

  it("stand where they matter and defer to the safety data sheet", () => {
    expect(text("laminate-bottom")).toMatch(/blinds/);
    expect(text("laminate-bottom")).toMatch(/Styrene/);
    expect(text("set-boxes")).toMatch(/router/);
    expect(text("sand-deck")).toMatch(/dust/);
    expect(text("leash-plug")).toMatch(/drown/);
    for (const { id, cautions } of stepsOf(board()).value!) {
      if (cautions.length > 0) expect(cautions.at(-1), id).toMatch(/safety data sheet/);
    }
    expect(stepsOf(board()).value!.every(({ cautions }) => cautions.length > 0)).toBe(true);
  });

  it("follow the coat's resin and the foam", () => {
    const eps = board([], { blank: { foam: "eps-20" }, glass: { resin: "epoxy" } });
    const epoxy = makeLayup("epoxy");
    expect(text("laminate-bottom", eps, epoxy)).toMatch(/allergic/);
    expect(text("laminate-bottom", eps, epoxy)).not.toMatch(/Peroxide/);
    expect(text("boxes", eps, epoxy)).toMatch(/in stages/);
    expect(text("boxes")).not.toMatch(/in stages/);
  });

  it("are all of them where the resin is not known", () => {
    const unsaid = buildSteps(board([], { glass: {} }), NOTHING).value!;
    const words = unsaid.find(({ id }) => id === "laminate-bottom")!.cautions.join(" ");
    for (const word of [/blinds/, /allergic/, /Daylight/]) expect(words).toMatch(word);
  });
});

describe("the record", () => {
  it("marks steps done, and a later entry takes that back", () => {
    const done: RecordEntry = { id: "r1", kind: "done", step: "prep" };
    expect(step("prep", board([done])).done).toBe(true);
    const corrected = board([done, { id: "r2", kind: "done", step: "mark-fins", corrects: "r1" }]);
    expect(step("prep", corrected).done).toBe(false);
    expect(step("mark-fins", corrected).done).toBe(true);
  });

  it("follows a correction of a correction, by whichever id it names", () => {
    const chain = (last: string) =>
      board([
        { id: "r1", kind: "done", step: "prep" },
        { id: "r2", kind: "done", step: "mark-fins", corrects: "r1" },
        { id: "r3", kind: "done", step: "trim-deck", corrects: last },
      ]);
    for (const last of ["r1", "r2"]) {
      const done = stepsOf(chain(last)).value!.filter((one) => one.done);
      expect(done.map(({ id }) => id)).toEqual(["trim-deck"]);
    }
  });

  it("says what was done out of order, and takes it as it happened", () => {
    const early = board([{ id: "r1", kind: "done", step: "fill-bottom" }]);
    expect(codes(early)).toEqual(["warning steps.out-of-order"]);
    expect(step("fill-bottom", early).done).toBe(true);
    const timed = board([
      { id: "r1", kind: "done", step: "prep", at: "2026-04-11T12:00" },
      { id: "r2", kind: "done", step: "mark-fins", at: "2026-04-11T10:00" },
    ]);
    expect(codes(timed)).toEqual(["warning steps.out-of-order"]);
  });

  it("says which marks and corrections lead nowhere", () => {
    expect(codes(board([{ id: "r1", kind: "done", step: "waxing" }]))).toEqual([
      "warning steps.unknown-step",
    ]);
    const lost: RecordEntry = { id: "r2", kind: "done", step: "prep", corrects: "r9" };
    expect(codes(board([lost]))).toEqual(["warning steps.corrects-nothing"]);
  });
});

describe("a sand-through", () => {
  it.each([
    ["foam", ["dry", "feather", "patch", "fill", "sand"]],
    ["glass", ["feather", "patch", "fill", "sand"]],
    ["weave", ["feather", "fill", "sand"]],
  ] as const)("to the %s brings the steps that close it", (shows, parts) => {
    const repairs = ids(board([through("r5", shows)])).filter((id) => id.startsWith("repair"));
    expect(repairs).toEqual(parts.map((part) => `repair-1-${part}`));
    expect(step("cure-out", board([through("r5", shows)])).after).toContain("repair-1-sand");
  });

  it("keeps its number when it is corrected, and goes when it is taken back", () => {
    const two = [through("r5", "foam"), through("r6", "weave")];
    const corrected = ids(board([...two, through("r7", "glass", { corrects: "r5" })]));
    expect(corrected).toContain("repair-1-patch");
    expect(corrected).not.toContain("repair-1-dry");
    expect(corrected).toContain("repair-2-fill");
    const taken = board([...two, { id: "r8", kind: "done", step: "prep", corrects: "r5" }]);
    expect(ids(taken).filter((id) => id.startsWith("repair-1"))).toEqual([]);
    expect(ids(taken)).toContain("repair-2-sand");
  });

  it("struck before its face was glassed is told, and stands", () => {
    const laid = (at?: string): RecordEntry => ({
      id: "r9",
      kind: "done",
      step: "laminate-deck",
      ...(at === undefined ? {} : { at }),
    });
    const early = (record: readonly RecordEntry[]) =>
      codes(board(record)).includes("warning steps.struck-early");
    expect(early([through("r5", "foam")])).toBe(true);
    expect(early([through("r5", "foam"), laid()])).toBe(true);
    expect(early([laid(), through("r5", "foam")])).toBe(false);
    const at = (hour: string) => ({ at: `2026-04-11T${hour}` });
    expect(early([through("r5", "foam", at("12:00")), laid("2026-04-11T10:00")])).toBe(false);
    expect(early([laid("2026-04-11T14:00"), through("r5", "foam", at("12:00"))])).toBe(true);
    // Cloth on the other face says nothing of this one.
    expect(early([{ ...laid(), step: "laminate-bottom" } as RecordEntry, through("r5", "glass")])).toBe(true);
    expect(ids(board([through("r5", "foam")]))).toContain("repair-1-sand");
  });

  it("waits for both faces' sanding, and is not turned onto while its resin is wet", () => {
    const both = [through("r5", "glass"), through("r6", "weave", { face: "bottom" })];
    const before = board(both);
    expect(step("repair-1-feather", before).after).toEqual(["sand-bottom", "sand-deck"]);
    const [turn] = step("repair-2-feather", before).needs.filter(({ step: id }) => id.startsWith("repair-1"));
    expect(turn).toMatchObject({ step: "repair-1-fill", until: "flip" });
    const begun = board([...both, { id: "r7", kind: "done", step: "repair-2-feather" }]);
    expect(step("repair-1-feather", begun).after).toContain("repair-2-fill");
    expect(step("repair-2-fill", begun).after).not.toContain("repair-1-fill");
    expect(codes(begun).filter((code) => code.includes("repair"))).toEqual([]);
  });

  it.each([{ fromTailM: 2 }, { fromTailM: -0.1 }, { sizeM: 0 }, { fromCentrelineM: Number.NaN }])(
    "off the board is refused: %o",
    (place) => {
      const off = board([through("r5", "foam", place)]);
      expect(codes(off)).toEqual(["blocker steps.off-board"]);
      expect(ids(off).filter((id) => id.startsWith("repair"))).toEqual([]);
    },
  );
});

it("a face without cloth has no laminate to lay or trim, and its fill coat closes the foam", () => {
  const bare = { ...layup, coats: layup.coats.filter(({ id }) => id !== "laminate-bottom") };
  const { value } = buildSteps(board(), { finset: null, layup: bare, mix });
  const bottom = value!.filter(({ id }) => id.endsWith("-bottom")).map(({ id }) => id);
  expect(bottom).toEqual(["fill-bottom", "sand-bottom"]);
  expect(value!.find(({ id }) => id === "laminate-deck")?.after).toEqual(["prep", "mark-fins"]);
  const done = value!.map((each) => ({ ...each, done: each.id !== "fill-bottom" }));
  const { open } = buildWater(board(), done, null).value;
  expect(open.filter(({ bars }) => bars).map(({ step: id, text }) => [id, text])).toEqual([
    ["fill-bottom", "foam shows: the bottom is not glassed yet"],
  ]);
});

describe("ready for the water", () => {
  const doneAll = (input: StepsInput): RecordEntry[] =>
    ids(input)
      .filter((id) => id !== "water")
      .map((id, i) => ({ id: `d${i}`, kind: "done", step: id }));
  const water = (input: StepsInput) => buildWater(input, stepsOf(input).value, null);

  it("only once every step is done", () => {
    const none = water(board()).value!;
    expect(none.ready).toBe(false);
    expect(none.barred).toBe(true);
    expect(none.open.map(({ step, bars }) => [step, bars])).toEqual([
      ["laminate-bottom", true],
      ["boxes", true],
      ["leash-plug", true],
      ["prep", false],
    ]);
    expect(none.open.at(-1)?.text).toMatch(/^17 steps are still to do/);
    const all = doneAll(board());
    expect(water(board(all)).value).toMatchObject({
      ready: true,
      barred: false,
      open: [],
      firstSurfAt: null,
    });
    expect(water(board(all.slice(0, -1))).value).toMatchObject({ ready: false, barred: false });
  });

  it("on the day that the calendar gives the last look", () => {
    const days = [
      { step: "cure-out", endsAt: "2026-04-14T13:14" },
      { step: "water", endsAt: "2026-04-19T09:30" },
    ];
    const of = (calendar: Parameters<typeof buildWater>[2]) =>
      buildWater(board(), stepsOf(board()).value, calendar).value.firstSurfAt;
    expect(of(days)).toBe("2026-04-19T09:30");
    expect(of(days.slice(0, 1))).toBeNull();
  });

  it("not while foam shows, whatever is marked done, and again once it is closed", () => {
    const holed = board([...doneAll(board()), through("r5", "foam")]);
    const { value, findings } = water(holed);
    expect(value?.ready).toBe(false);
    expect(value?.open[0]).toMatchObject({ step: "repair-1-dry", bars: true });
    expect(value?.open[0]?.text).toMatch(/foam shows on the left of the deck, 400 mm from the tail/);
    expect(findings.map(({ severity, code }) => `${severity} ${code}`)).toEqual(["blocker water.foam-shows"]);
    const repaired = board([
      ...holed.record!,
      ...doneAll(holed).map((entry, i) => ({ ...entry, id: `e${i}` })),
    ]);
    expect(water(repaired)).toMatchObject({ value: { ready: true }, findings: [] });
  });

  it("not while nothing is known of the glass", () => {
    const bare: StepsInput = { survey: { lengthM: 1.8 } };
    const { value, findings } = buildSteps(bare, NOTHING);
    expect(value).toBeNull();
    expect(findings.map(({ code }) => code)).toEqual(["steps.no-glass"]);
    expect(buildWater(bare, null, null).value).toMatchObject({ ready: false, firstSurfAt: null });
  });
});

describe("tools", () => {
  it("lie ready at every step that hands are needed for, a filter for dust and one for vapour where each is met", () => {
    for (const one of stepsOf(board([through("r5", "foam")])).value!) {
      expect(one.tools.length > 0, one.id).toBe(one.id !== "cure-out");
      expect(one.tools.includes("mask with organic-vapour cartridges"), one.id).toBe(one.cures !== null);
      const isDusty = one.cautions.join(" ").includes("dust harms");
      if (isDusty) expect(one.tools, one.id).toContain("mask with particle filters");
    }
  });
});

describe("the working", () => {
  it("is there for every number of the steps, and names its inputs", () => {
    const input = board([through("r5", "foam")]);
    const steps = stepsOf(input).value;
    expect(Object.keys(stepsWorking).sort()).toEqual(
      [
        ...listNumericPaths(
          steps?.map(({ coat: _, cures: __, doneAt: ___, ...rest }) => rest),
          "steps",
        ),
      ].sort(),
    );
    const context = { plan: { steps, layup, mix }, board: input };
    for (const { inputs } of Object.values(stepsWorking)) {
      expect(inputs(context, ["fill-deck", "0"])).not.toEqual([]);
    }
  });
});

describe("preparation by kind of foam, and what is put under and over the glass", () => {
  const eps = { foam: "eps-20", vent: true };
  const chosen = board([], {
    blank: eps,
    glass: { resin: "epoxy", lapKind: "cut", logos: true, pinline: true, finish: "gloss" },
  });
  const steps = stepsOf(chosen).value ?? [];
  const of = (id: string) => steps.find((step) => step.id === id);
  const placeOf = (id: string) => steps.findIndex((step) => step.id === id);

  it("keeps acetone and polyester off polystyrene, and says what to have at hand", () => {
    expect(of("prep")?.title).toContain("no acetone, no polyester");
    expect(of("prep")?.materials).toContain("alcohol for wiping, never acetone");
    const pu = stepsOf(board()).value?.find(({ id }) => id === "prep");
    expect(pu?.title).toContain("no fingerprints");
  });

  it("puts masks before the cloth, logos under the deck's, the pinline under the gloss, the vent into the sanded deck", () => {
    const order = ["mask-bottom", "laminate-bottom", "mask-deck", "logos", "laminate-deck", "sand-deck"];
    for (const [i, id] of [...order, "pinline", "gloss-bottom", "cure-out"].entries()) {
      expect(placeOf(id), id).toBeGreaterThan(
        i === 0 ? -1 : placeOf([...order, "pinline", "gloss-bottom"][i - 1]!),
      );
    }
    expect(placeOf("vent")).toBeGreaterThan(placeOf("sand-deck"));
    expect(of("vent")?.title).toContain("closed before the water");
    expect(of("laminate-deck")?.after).toEqual(expect.arrayContaining(["mask-deck", "logos"]));
  });

  it("plans none of them unasked, and says that no vent was taken on polystyrene", () => {
    const plain = stepsOf(board([], { blank: { foam: "eps-20" }, glass: { resin: "epoxy" } }));
    const ids = plain.value?.map(({ id }) => id) ?? [];
    for (const id of ["vent", "logos", "pinline", "mask-bottom"]) expect(ids).not.toContain(id);
    expect(plain.assumptions.map(({ path }) => path)).toContain("blank.vent");
    expect(stepsOf(board()).assumptions.map(({ path }) => path)).not.toContain("blank.vent");
  });

  it("takes nothing in silence: timing of boxes, and a foam that nobody named", () => {
    const { blank: _, ...bare } = board();
    const taken = buildSteps(bare, { finset: null, layup: null, mix: null }).assumptions;
    expect(taken.map(({ path }) => path)).toContain("fins.boxes");
    expect(taken.some(({ value }) => value.includes("polystyrene"))).toBe(true);
  });
});
