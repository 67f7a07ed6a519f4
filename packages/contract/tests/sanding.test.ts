import { type Plan, planBuild } from "@lapline/engine";
import { describe, expect, it } from "vitest";
import patches from "../../engine/tests/reference/steps/repair-patches.json";
import { DEMO_BOARDS } from "../src/demoBoards";
import { readBoardFile } from "../src/readBoardFile";

const STATIONS = [
  { fromTail: "3 in", width: "9 in", thickness: "7/8 in", rocker: "2 in" },
  { fromTail: "12 in", width: "14 3/4 in", thickness: "1 11/16 in", rocker: "1 in" },
  { fromTail: "36 in", width: "19 1/4 in", thickness: "2 3/8 in", rocker: "0 in" },
  { fromNose: "12 in", width: "12 1/4 in", thickness: "1 11/16 in", rocker: "2 in" },
  { fromNose: "3 in", width: "5 1/4 in", thickness: "7/8 in", rocker: "4 1/4 in" },
];
const BOX = { length: "118 mm", width: "21 mm", depth: "18 mm", behindTrailing: "4 mm" };
const SIX_FOOT = {
  format: "lapline-board/1",
  name: "six foot",
  survey: {
    length: "6'0\"",
    nose: { kind: "pointed" },
    tail: { kind: "squash", width: "5 in" },
    stations: STATIONS,
    section: { apex: 0.4, deckFullness: 2.6, bottomFullness: 8, bottom: { kind: "flat" } },
  },
  blank: { foam: "pu-48", stringer: { thickness: "4 mm", wood: "basswood" } },
  glass: { resin: "polyester", deck: { layers: ["e-136", "e-136"] }, bottom: { layers: ["e-136"] } },
  fins: {
    arrangement: "tri",
    set: [
      {
        fin: "front",
        fromTail: "11 in",
        fromRail: "1 1/8 in",
        base: "4 1/2 in",
        toe: { overBase: "1/4 in" },
        cant: "6 deg",
        box: BOX,
      },
      { fin: "centre", fromTail: "3 1/2 in", base: "4 1/2 in", box: BOX },
    ],
  },
  shop: { temperature: { day: "20 C", night: "20 C" }, start: "2026-04-11T09:00" },
};

function planOf(change: object = {}): Plan {
  const read = readBoardFile(JSON.stringify({ ...SIX_FOOT, ...change }));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return planBuild(read.board);
}

const hours = (plan: Plan, ...steps: readonly string[]) =>
  (plan.steps ?? []).filter(({ id }) => steps.includes(id)).reduce((sumS, step) => sumS + step.handsOnS, 0) /
  3600;
const practice = (experience: string) => ({ shop: { ...SIX_FOOT.shop, experience } });

describe("facts of the trade, from the default plan of a six-foot board (common practice, no source)", () => {
  it("a trade sander takes about an hour and a half, a first-timer about six hours", () => {
    expect(hours(planOf(practice("trade")), "sand-bottom", "sand-deck")).toBeGreaterThan(1.2);
    expect(hours(planOf(practice("trade")), "sand-bottom", "sand-deck")).toBeLessThan(1.9);
    expect(hours(planOf(practice("first")), "sand-bottom", "sand-deck")).toBeGreaterThan(4.8);
    expect(hours(planOf(practice("first")), "sand-bottom", "sand-deck")).toBeLessThan(7.5);
  });

  it("a wet-sanded finish ends at P1200", () => {
    const wet = planOf({ glass: { ...SIX_FOOT.glass, finish: "wet-sanded" } });
    expect(wet.sanding?.grits.at(-1)?.grit).toBe("P1200");
    expect(planOf().sanding?.grits.at(-1)?.grit).toBe("P320");
  });

  it("a first-timer goes through the rails first, the more so on a thin fill coat", () => {
    const first = (plan: Plan) => plan.sanding!.zones.toSorted((a, b) => a.rank - b.rank)[0]!;
    const usual = first(planOf(practice("first")));
    const film = ["rail-left", "rail-right"].map((zone, i) => ({
      id: `r${i}`,
      kind: "film",
      zone,
      film: "50 um",
    }));
    const thin = first(planOf({ ...practice("first"), record: film }));
    expect(usual.id).toMatch(/^rail-/);
    expect(thin.id).toMatch(/^rail-/);
    expect(thin.risk).toBe("through");
    expect(thin.throughShare).toBeGreaterThan(usual.throughShare);
  });

  it("a proud stringer is sanded through first", () => {
    const blank = { ...SIX_FOOT.blank, stringer: { ...SIX_FOOT.blank.stringer, proud: "0.3 mm" } };
    const first = planOf({ blank }).sanding?.zones.find(({ rank }) => rank === 1);
    expect(first?.id).toBe("stringer");
    expect(first?.filmM).toBe(0);
  });
});

const through = (shows: string, size: string, more: object = {}) => ({
  id: "r1",
  kind: "sand-through",
  face: "deck",
  side: "left",
  fromTail: "600 mm",
  fromCentreline: "200 mm",
  size,
  shows,
  ...more,
});

describe("a sand-through", () => {
  it.each(patches.cases)(
    "of $inputs.sizeMm mm where $inputs.shows shows has the patches and resin worked by hand",
    ({ inputs, expected }) => {
      const [repair] = planOf({ record: [through(inputs.shows, `${inputs.sizeMm} mm`)] }).repairs ?? [];
      expect(repair?.layers.length).toBe(expected.layers.length);
      expected.layers.forEach((layer, i) => {
        const got = repair!.layers[i]!;
        expect(got.acrossM * 1000).toBeCloseTo(layer.acrossMm, 6);
        expect(got.clothMassKg * 1000).toBeCloseTo(layer.clothG, 3);
        expect(got.resinMassKg * 1000).toBeCloseTo(layer.resinG, 3);
      });
      const patch = repair?.coats.find(({ id }) => id === "repair-1-patch");
      expect((patch?.resinMassKg ?? 0) * 1000).toBeCloseTo(expected.patchG, 3);
      expect((patch?.mixedMassKg ?? 0) * 1000).toBeCloseTo(expected.patchMixedG, 2);
      const fill = repair?.coats.at(-1);
      expect((fill?.resinMassKg ?? 0) * 1000).toBeCloseTo(expected.fillG, 3);
      expect((fill?.mixedMassKg ?? 0) * 1000).toBeCloseTo(expected.fillMixedG, 2);
      const hollow = repair?.hollow ?? null;
      expect((hollow?.depthM ?? 0) * 1e6).toBeCloseTo(expected.hollow?.depthUm ?? 0, 1);
      expect((hollow?.volumeM3 ?? 0) * 1e9).toBeCloseTo(expected.hollow?.volumeMm3 ?? 0, 0);
      expect((hollow?.resinMassKg ?? 0) * 1000).toBeCloseTo(expected.hollow?.resinG ?? 0, 3);
    },
  );

  it("is levelled out of the patches' cup, at its dose and inside a band", () => {
    const [repair] = planOf({ record: [through("foam", "80 mm")] }).repairs ?? [];
    const { hollow, coats } = repair!;
    if (hollow === null || hollow.baseMassKg === null || hollow.hardenerMassKg === null)
      throw new Error("no hollow");
    expect(hollow.hardenerMassKg / hollow.baseMassKg).toBeCloseTo(coats[0]!.hardenerRatio!, 12);
    expect(hollow.baseMassKg + hollow.hardenerMassKg).toBeCloseTo(hollow.resinMassKg, 12);
    expect(hollow.resinMassLowKg).toBeLessThan(hollow.resinMassKg);
    expect(hollow.resinMassHighKg).toBeGreaterThan(hollow.resinMassKg);
    expect(hollow.resinMassHighKg).toBeLessThan(coats[0]!.mixedMassKg);
  });

  it("has its cloth cut and bought besides, and the order's own cuts stay as they were", () => {
    const shop = { ...SIX_FOOT.shop, rolls: { "e-136": { width: "762 mm", price: 10 } } };
    const before = planOf({ shop });
    const after = planOf({ shop, record: [through("foam", "30 mm")] });
    expect(after.cutplan?.rolls).toEqual(before.cutplan?.rolls);
    expect(after.layup?.pieces).toEqual(before.layup?.pieces);
    expect(before.cutplan?.repairs).toEqual([]);
    const [cut] = after.cutplan?.repairs ?? [];
    // By hand: squares of 104 and 80 mm side by side on 762 mm; π/4 (104² + 80²) over 762 × 104 mm is 0.17062.
    expect(cut?.patches.map(({ id, acrossM }) => [id, Math.round(acrossM * 1000)])).toEqual([
      ["repair-1-1", 80],
      ["repair-1-2", 104],
    ]);
    expect(cut?.lengthM).toBeCloseTo(0.104, 9);
    expect(cut?.usedRatio).toBeCloseTo(0.17062, 4);
    expect(cut?.cost).toBeCloseTo(1.04, 9);
    const cloth = (plan: Plan) => {
      const { onBoardM = 0, wastedM = 0 } = plan.cost?.lines.find(({ id }) => id === "e-136")?.length ?? {};
      return onBoardM + wastedM;
    };
    expect(cloth(after) - cloth(before)).toBeCloseTo(0.104, 9);
  });

  it("has cups, dose and clock of its own in the mix, base and hardener adding up", () => {
    const plan = planOf({ record: [through("foam", "30 mm")] });
    const fill = plan.repairs?.[0]?.coats.at(-1);
    const mixed = plan.mix?.coats.find(({ id }) => id === "repair-1-fill");
    expect(fill?.hardenerRatio).toBe(mixed?.hardenerRatio);
    expect(mixed?.clock?.sandableS).toBeGreaterThan(0);
    // The generic polyester of the demo board takes wax in what is sanded, and none between patches.
    expect(mixed?.cups[0]?.waxVolumeM3).toBeGreaterThan(0);
    const patch = plan.mix?.coats.find(({ id }) => id === "repair-1-patch");
    expect(patch?.cups.map(({ waxVolumeM3 }) => waxVolumeM3)).toEqual([0]);
    const { baseMassKg, hardenerMassKg, hardenerRatio, hardenerVolumeM3 } = fill ?? {};
    if (baseMassKg == null || hardenerMassKg == null || hardenerRatio == null)
      throw new Error("no fill coat");
    expect(baseMassKg + hardenerMassKg).toBeCloseTo(fill?.mixedMassKg ?? Number.NaN, 12);
    expect(hardenerMassKg / baseMassKg).toBeCloseTo(hardenerRatio, 12);
    expect(hardenerVolumeM3).toBeGreaterThan(0);
  });

  it("on a demo board that is sanded moves the first surf by a day or more", () => {
    const file = JSON.parse(DEMO_BOARDS.find(({ id }) => id === "five-ten-quad")?.text ?? "");
    const surfAt = (record: readonly object[]) => {
      const read = readBoardFile(JSON.stringify({ ...file, record }));
      return Date.parse(read.ok ? (planBuild(read.board).water.firstSurfAt ?? "") : "");
    };
    const DAY_MS = 86_400_000;
    expect(surfAt([through("foam", "30 mm")]) - surfAt([])).toBeGreaterThanOrEqual(DAY_MS);
  });

  it("inserts steps, holds up what follows by a day and more, and blocks the water until they are done", () => {
    const [before, after] = [planOf(), planOf({ record: [through("foam", "30 mm")] })];
    const added = after
      .steps!.map(({ id }) => id)
      .filter((id) => !before.steps!.some((step) => step.id === id));
    expect(added).toEqual([
      "repair-1-dry",
      "repair-1-feather",
      "repair-1-patch",
      "repair-1-fill",
      "repair-1-sand",
    ]);
    const restAt = (plan: Plan) =>
      Date.parse(plan.calendar?.find(({ step }) => step === "cure-out")?.startsAt ?? "");
    expect(restAt(after) - restAt(before)).toBeGreaterThan(24 * 3600 * 1000);
    expect(after.water).toMatchObject({ ready: false, barred: true });
    expect(after.water.open[0]).toMatchObject({ step: "repair-1-dry", bars: true });
    expect(after.findings.map(({ code }) => code)).toContain("water.foam-shows");
    const all = after.steps!.filter(({ id }) => id !== "water");
    const done = all.map(({ id }, i) => ({ id: `d${i}`, kind: "done", step: id }));
    const open = done.filter(({ step }) => step !== "repair-1-sand");
    expect(planOf({ record: [through("foam", "30 mm"), ...open] }).water.ready).toBe(false);
    const closed = planOf({ record: [through("foam", "30 mm"), ...done] });
    expect(closed.water.ready).toBe(true);
    expect(closed.repairs?.[0]?.done).toBe(true);
  });

  it("that is only shine is dulled and filled, not feathered or patched", () => {
    const plan = planOf({ record: [through("shine", "15 mm")] });
    expect(plan.repairs?.[0]).toMatchObject({ featherM: 0, dryS: 0, layers: [] });
    expect(
      plan.findings.some(({ code, severity }) => code === "water.shine-shows" && severity === "note"),
    ).toBe(true);
  });

  it("outside the board is refused, and nothing is planned for it", () => {
    for (const place of [{ fromTail: "4 m" }, { fromCentreline: "400 mm" }]) {
      const plan = planOf({ record: [through("foam", "30 mm", place)] });
      expect(
        plan.findings.some(({ code, severity }) => code === "steps.off-board" && severity === "blocker"),
      ).toBe(true);
      expect(plan.repairs).toEqual([]);
    }
  });
});

describe("papers of the builder's own", () => {
  const found = (papers: object, finish = "wet-sanded") => {
    const { findings, sanding, steps } = planOf({ glass: { ...SIX_FOOT.glass, finish, papers } });
    const codes = findings.flatMap(({ severity, code, path }) =>
      path === "glass.papers" ? [`${severity} ${code}`] : [],
    );
    return { codes, grits: sanding?.grits.map(({ grit }) => grit) ?? null, steps };
  };

  it("take the place of the usual ones, dry and wet each", () => {
    expect(found({ dry: ["P100", "P150", "P220", "P320"] })).toMatchObject({
      codes: [],
      grits: ["P100", "P150", "P220", "P320", "P400", "P600", "P800", "P1000", "P1200"],
    });
    expect(found({ wet: ["P400", "P600"] }).grits?.slice(-2)).toEqual(["P400", "P600"]);
  });

  // Common practice, no source: no step to less than half the grain. P80 has 201 µm, P240 58.5 µm, P150 between them.
  it("are told where a step leaves scratches, and which paper goes between", () => {
    const { findings } = planOf({ glass: { ...SIX_FOOT.glass, papers: { dry: ["P80", "P240", "P320"] } } });
    const [jump] = findings.filter(({ code }) => code === "sanding.jump");
    expect(jump?.text).toMatch(/P80 straight to P240 .* put P1[25]0 between/);
    expect(found({ dry: ["P80", "P120", "P180", "P240", "P320"], wet: ["P800"] }).codes).toEqual([
      "warning sanding.jump",
    ]);
  });

  it.each([
    [{ dry: ["P120", "P80"] }, "sanded", "blocker sanding.papers"],
    [{ dry: ["P80", "P80"] }, "sanded", "blocker sanding.papers"],
    [{ dry: [] }, "sanded", "blocker sanding.papers"],
  ])("%o are refused, and no film is reckoned with them", (papers, finish, code) => {
    const { codes, grits, steps } = found(papers, finish);
    expect(codes).toContain(code);
    expect(grits).toBeNull();
    expect(steps?.some(({ id }) => id === "sand-deck")).toBe(true);
  });

  it("that the finish has no use for, or that begin or end oddly, are told", () => {
    expect(found({ wet: ["P400"] }, "sanded").codes).toEqual(["warning sanding.wet-unused"]);
    expect(found({ dry: ["P150", "P180"] }, "sanded").codes).toEqual([
      "note sanding.fine-start",
      "note sanding.coarse-end",
    ]);
  });

  it("are P grades", () => {
    const read = readBoardFile(
      JSON.stringify({ ...SIX_FOOT, glass: { ...SIX_FOOT.glass, papers: { dry: ["80"] } } }),
    );
    expect(read.ok ? [] : read.problems.map(({ path }) => path)).toEqual(["glass.papers.dry[0]"]);
  });
});

describe("an entry that was a slip", () => {
  it("is struck by a later one and stands no more", () => {
    const struck = [through("foam", "30 mm"), { id: "r2", kind: "struck", corrects: "r1" }];
    expect(planOf({ record: struck }).repairs).toEqual([]);
    expect(planOf({ record: struck }).steps?.some(({ id }) => id.startsWith("repair"))).toBe(false);
    const marks = [
      { id: "d1", kind: "done", step: "prep" },
      { id: "d2", kind: "struck", corrects: "d1" },
    ];
    expect(planOf({ record: marks }).steps?.find(({ id }) => id === "prep")?.done).toBe(false);
    const gauged = [
      { id: "f1", kind: "film", zone: "deck", film: "90 um" },
      { id: "f2", kind: "struck", corrects: "f1" },
    ];
    const deck = planOf({ record: gauged }).sanding?.zones.find(({ id }) => id === "deck");
    expect(deck?.filmBy).toBe("plan");
  });

  it("needs the id of what it strikes", () => {
    const record = [{ id: "r2", kind: "struck" }];
    const read = readBoardFile(JSON.stringify({ ...SIX_FOOT, record }));
    expect(read.ok ? [] : read.problems.map(({ path }) => path)).toEqual(["record[0].corrects"]);
  });
});

describe("a box that is not sealed in", () => {
  it("keeps the board from the water, and says so from the router on", () => {
    const marks = [{ id: "d1", kind: "done", step: "set-boxes" }];
    const codes = (plan: Plan) => plan.findings.map(({ code }) => code);
    expect(codes(planOf({ record: marks }))).toContain("water.box-open");
    const sealed = [...marks, { id: "d2", kind: "done", step: "boxes" }];
    expect(codes(planOf({ record: sealed }))).not.toContain("water.box-open");
  });
});

describe("readings of the film in a board file", () => {
  it("take a gauge and dust with their units", () => {
    const record = [
      { id: "r1", kind: "film", zone: "rail-left", film: "90 um" },
      { id: "r2", kind: "dust", face: "bottom", mass: "40 g", after: "P180" },
    ];
    const rail = planOf({ record }).sanding?.zones.find(({ id }) => id === "rail-left");
    expect(rail).toMatchObject({ filmBy: "gauge" });
    expect(rail?.filmM).toBeCloseTo(90e-6, 12);
  });

  it.each([
    ["a film without unit", { id: "r1", kind: "film", zone: "deck", film: 90 }],
    ["a film thinner than nought", { id: "r1", kind: "film", zone: "deck", film: "-10 um" }],
    ["dust after no paper", { id: "r1", kind: "dust", face: "deck", mass: "40 g" }],
    ["a stringer thinner than level", null],
  ])("refuse %s", (_, entry) => {
    const blank = { ...SIX_FOOT.blank, stringer: { ...SIX_FOOT.blank.stringer, proud: "-1 mm" } };
    const read = readBoardFile(
      JSON.stringify({ ...SIX_FOOT, ...(entry === null ? { blank } : { record: [entry] }) }),
    );
    expect(read.ok).toBe(false);
  });
});
