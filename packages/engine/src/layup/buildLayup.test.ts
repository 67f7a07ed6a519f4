import { describe, expect, it } from "vitest";
import { makeHalfCylinder, makeLensBoard } from "../../tests/fixtures/analyticShape";
import board from "../../tests/reference/weight/wholeBoard.json";
import { buildLayup } from "./buildLayup";
import type { FittingsInput } from "./FittingsInput";
import type { BlankInput, GlassInput } from "./GlassInput";
import type { LayupPlan } from "./LayupPlan";

const shape = makeLensBoard(board.body);
const PU: BlankInput = { foam: "pu-48" };
const EPS: BlankInput = { foam: "eps-20" };
const LAYERS = {
  bottom: { layers: ["e-136"], lapM: 0.05 },
  deck: { layers: ["e-136", "e-136"], lapM: 0.05 },
} satisfies GlassInput;
const POLYESTER: GlassInput = { resin: "polyester", ...LAYERS };
const EPOXY: GlassInput = { resin: "epoxy", ...LAYERS };
const QUAD: FittingsInput = {
  arrangement: "quad",
  boxes: "after-fill",
  set: [
    { fin: "front", fromTailM: 0.285, fromRailM: 0.032 },
    { fin: "rear", fromTailM: 0.15, fromRailM: 0.05 },
  ],
  leashPlug: { diameterM: 0.028, depthM: 0.02 },
};

function faults(glass: GlassInput | undefined, blank: BlankInput | undefined = PU, fins?: FittingsInput) {
  const stage = buildLayup({ glass, blank, fins }, shape);
  return {
    value: stage.value,
    found: stage.findings.map(({ code, severity, path }) => `${severity} ${code} ${path}`),
  };
}

function build(glass: GlassInput, blank: BlankInput = PU, fins?: FittingsInput): LayupPlan {
  const { value, findings } = buildLayup({ glass, blank, fins }, shape);
  if (value === null) throw new Error(findings.map(({ text }) => text).join("; "));
  return value;
}

const idsOf = (list: readonly { readonly id: string }[]) => list.map(({ id }) => id);

describe("what must be there", () => {
  it("notes a missing glass part and says what to add", () => {
    const { value, found } = faults(undefined);
    expect(value).toBeNull();
    expect(found).toEqual(["note layup.no-glass glass"]);
  });

  it("waits for the shape, and still says what is wrong with the glass", () => {
    const stage = buildLayup({ glass: { ...POLYESTER, resin: "polyestr" }, blank: PU }, null);
    expect(stage.value).toBeNull();
    expect(stage.findings.map(({ code }) => code)).toEqual(["layup.unknown-resin", "layup.no-shape"]);
  });

  it("keeps what it took by default where another fault stops the plan", () => {
    const stage = buildLayup({ glass: { ...LAYERS, resin: "polyestr" }, blank: PU, fins: QUAD }, shape);
    expect(stage.value).toBeNull();
    const taken = stage.assumptions.map(({ path }) => path);
    for (const path of ["glass.lapKind", "glass.finish", "glass.resinRatio", "fins.set[0].box"]) {
      expect(taken).toContain(path);
    }
  });

  it("takes no foam and no resin by default", () => {
    expect(buildLayup({ glass: POLYESTER }, shape).findings.map(({ code }) => code)).toEqual([
      "layup.no-blank",
    ]);
    expect(faults(LAYERS).found).toEqual(["blocker layup.no-resin glass.resin"]);
  });
});

describe("fillers", () => {
  const keptOf = ({ coats }: LayupPlan, id: string) => coats.find((coat) => coat.id === id)!;

  it("take their own room around the boxes: resin and grains together fill the same gap", () => {
    const neat = keptOf(build(POLYESTER, PU, QUAD), "boxes");
    const filled = keptOf(build({ ...POLYESTER, fillers: { box: "milled-fibre" } }, PU, QUAD), "boxes");
    // By hand: cured polyester 1200 kg/m³; a quarter of its mass of E-glass grains at 2550 kg/m³ (glass property sheet).
    const gapM3 = neat.keptMassKg / 1200;
    const resinKg = gapM3 / (1 / 1200 + 0.25 / 2550);
    expect(filled.keptMassKg).toBeCloseTo(resinKg, 9);
    expect(filled.filler?.keptMassKg).toBeCloseTo(0.25 * resinKg, 9);
    expect(filled.filler?.massKg).toBeCloseTo(0.25 * filled.resinMassKg, 9);
    expect(neat.filler).toBeNull();
  });

  it("lighten a seal, and are refused by a name that nobody knows", () => {
    const sealed = build({ ...EPOXY, seal: true, fillers: { seal: "hollow-spheres" } }, EPS);
    const seal = keptOf(sealed, "seal-deck");
    expect(seal.filler?.massKg).toBeCloseTo(0.1 * seal.resinMassKg, 9);
    expect(faults({ ...POLYESTER, fillers: { box: "silca" } }).found).toEqual([
      "blocker layup.unknown-filler glass.fillers.box",
    ]);
    expect(faults({ ...POLYESTER, tint: { of: "blue", laminate: 0.02 } }).found).toEqual([
      "blocker layup.unknown-tint glass.tint.of",
    ]);
  });
});

describe("a roll narrower than a layer", () => {
  it("counts what lies double at the seam as cloth and as resin, and only there", () => {
    // 0.18 m half-widths and two laps on rolls of 0.3 m: every full layer lies in two strips.
    const narrow = { rolls: { "e-136": { widthM: 0.3 } } };
    const seamed = buildLayup({ glass: POLYESTER, blank: PU, shop: narrow }, shape).value!;
    const whole = build(POLYESTER);
    seamed.pieces.forEach((piece, i) => {
      const pattern = seamed.patterns.find(({ id }) => id === piece.pattern)!;
      // By hand: 25 mm of overlap all along the piece, at 4 oz/yd², 135.623 g/m².
      const seamM2 = 0.025 * pattern.lengthM;
      expect(piece.seamAreaM2).toBeCloseTo(seamM2, 12);
      expect(piece.areaM2 - whole.pieces[i]!.areaM2).toBeCloseTo(seamM2, 12);
      expect(piece.clothMassKg - whole.pieces[i]!.clothMassKg).toBeCloseTo(0.135623 * seamM2, 8);
      expect(whole.pieces[i]!.seamAreaM2).toBe(0);
    });
    const keptOf = ({ coats }: LayupPlan) => coats.find(({ id }) => id === "laminate-deck")!.keptMassKg;
    const addedKg = seamed.pieces.filter(({ face }) => face === "deck").length * 0.135623 * 0.025;
    expect(keptOf(seamed) - keptOf(whole)).toBeCloseTo(addedKg * seamed.patterns[1]!.lengthM, 4);
  });
});

describe("styrene on polystyrene foam", () => {
  it.each(["eps-20", "xps-32"])("refuses polyester on %s and plans nothing", (foam) => {
    const { value, found } = faults(POLYESTER, { foam });
    expect(value).toBeNull();
    expect(found).toContain("blocker layup.styrene-on-foam glass.resin");
  });

  it.each([
    [{ ...EPOXY, boxResin: "polyester" }, "glass.boxResin"],
    [{ ...EPOXY, resin: { laminate: "epoxy", fill: "polyester", box: "epoxy" } }, "glass.resin.fill"],
    [{ ...EPOXY, resin: { laminate: "epoxy", box: "sunlight" } }, "glass.resin.box"],
  ] satisfies Array<[GlassInput, string]>)("refuses it where it is named: %#", (glass, path) => {
    const { value, found } = faults(glass, EPS);
    expect(value).toBeNull();
    expect(found).toContain(`blocker layup.styrene-on-foam ${path}`);
  });

  it("lets epoxy on EPS and polyester on PU through", () => {
    expect(faults(EPOXY, EPS).value).not.toBeNull();
    expect(faults(POLYESTER, PU).found).toEqual([]);
  });

  it("warns of polyester over epoxy", () => {
    expect(faults({ ...EPOXY, resin: { laminate: "epoxy", fill: "polyester" } }).found).toContain(
      "warning layup.polyester-over-epoxy glass.resin.fill",
    );
  });
});

describe("ids nobody knows", () => {
  it.each([
    [
      { ...POLYESTER, bottom: { layers: ["e-163"] } },
      PU,
      "layup.unknown-cloth glass.bottom.layers[0]",
      "e-136",
    ],
    [{ ...POLYESTER, resin: "poliester" }, PU, "layup.unknown-resin glass.resin", "polyester"],
    [{ ...POLYESTER, resin: "constructor" }, PU, "layup.unknown-resin glass.resin", "polyester"],
    [POLYESTER, { foam: "pu48" }, "layup.unknown-foam blank.foam", "pu-48"],
    [POLYESTER, { foam: "pu-4800" }, "layup.unknown-foam blank.foam", "pu-48"],
  ] satisfies Array<[GlassInput, BlankInput, string, string]>)(
    "names near ones: %#",
    (glass, blank, code, near) => {
      const stage = buildLayup({ glass, blank }, shape);
      const blocker = stage.findings.find((found) => `${found.code} ${found.path}` === code);
      expect(stage.value).toBeNull();
      expect(blocker?.severity).toBe("blocker");
      expect(blocker?.text).toContain(near);
    },
  );
});

describe("sizes that cannot be", () => {
  it.each([
    [{ ...POLYESTER, deck: { layers: ["e-136"], lapM: 0.3 } }, "layup.lap-too-wide glass.deck.lap"],
    [{ ...POLYESTER, deck: { layers: ["e-136"], lapM: -0.01 } }, "layup.lap-not-a-width glass.deck.lap"],
    [{ ...POLYESTER, deck: { layers: ["e-136"], lapM: Number.NaN } }, "layup.lap-not-a-width glass.deck.lap"],
    [withPatch({ fromTailM: 0.6, toM: 0.2 }), "layup.patch-order glass.patches[0].to"],
    [withPatch({ fromTailM: 0, toM: 3 }), "layup.patch-outside glass.patches[0].to"],
    [withPatch({ fromTailM: 0, toM: 0.5, widthM: 0 }), "layup.patch-width glass.patches[0].width"],
    [{ ...POLYESTER, resinRatio: 12 }, "layup.ratio glass.resinRatio"],
  ] satisfies Array<[GlassInput, string]>)("are refused: %#", (glass, code) => {
    const { value, found } = faults(glass);
    expect(value).toBeNull();
    expect(found).toEqual([`blocker ${code}`]);
  });

  it("refuses a box without a depth", () => {
    const fins: FittingsInput = {
      arrangement: "single",
      set: [{ fin: "centre", fromTailM: 0.2, box: { lengthM: 0.26, widthM: 0.025, depthM: 0 } }],
    };
    expect(faults(POLYESTER, PU, fins).found).toEqual(["blocker layup.box-size fins.set[0].box"]);
  });

  it("lets a patch end a hair past the nose", () => {
    const layup = build(withPatch({ fromTailM: 1, toM: shape.plan.lengthTapeM + 0.0005 }));
    expect(layup.pieces.at(-1)?.extent?.toTapeM).toBe(shape.plan.lengthTapeM);
  });
});

describe("a patch that names its part of the board", () => {
  const lengthM = shape.plan.lengthTapeM;
  const lay = (patch: NonNullable<GlassInput["patches"]>[number], fins?: FittingsInput) => {
    const stage = buildLayup({ glass: { ...POLYESTER, patches: [patch] }, blank: PU, fins }, shape);
    return { stage, extent: stage.value?.pieces.find(({ id }) => id === "patch-1")?.extent };
  };

  it.each([
    ["tail", 0, 0.5],
    ["deck", 0, 0.62 * lengthM],
    ["nose", lengthM - 0.3, lengthM],
    ["strip", 0, lengthM],
    ["fins", 0.1, 0.335],
  ] as const)("%s lies where it usually does, and the plan says so", (over, fromM, toM) => {
    const { stage, extent } = lay({ face: "bottom", cloth: "e-136", over }, QUAD);
    expect(extent?.fromTailTapeM).toBeCloseTo(fromM, 9);
    expect(extent?.toTapeM).toBeCloseTo(toM, 9);
    expect(stage.assumptions.map(({ path }) => path)).toContain("glass.patches[0]");
  });

  it("keeps a measured end, and a strip its usual width", () => {
    const { stage, extent } = lay({ face: "deck", cloth: "e-136", over: "strip", toM: 1 });
    expect(extent?.toTapeM).toBe(1);
    expect(stage.value?.pieces.at(-1)?.widthM).toBeCloseTo(0.1, 9);
  });

  it("is no wider than the tape that it is cut from", () => {
    const tape = { fibre: "carbon", arealMassKgM2: 0.2, weave: "one-way", rollWidthM: 0.05 } as const;
    const patch = { face: "bottom", cloth: "tape", over: "strip" } as const;
    const board = { glass: { ...POLYESTER, patches: [patch] }, blank: PU, materials: { cloths: { tape } } };
    expect(buildLayup(board, shape).value?.pieces.at(-1)?.widthM).toBeCloseTo(0.05, 9);
    const rolled = { ...board, shop: { rolls: { tape: { widthM: 0.08 } } } };
    expect(buildLayup(rolled, shape).value?.pieces.at(-1)?.widthM).toBeCloseTo(0.08, 9);
  });

  it.each([
    [{ face: "deck", cloth: "e-136" }, "layup.patch-where glass.patches[0]"],
    [{ face: "deck", cloth: "e-136", fromTailM: 0.2 }, "layup.patch-where glass.patches[0]"],
    [{ face: "bottom", cloth: "e-136", over: "fins" }, "layup.patch-no-fins glass.patches[0].over"],
  ] as const)("is refused where nothing says where it lies: %#", (patch, code) => {
    const { stage } = lay(patch);
    expect(stage.value).toBeNull();
    expect(stage.findings.map((found) => `${found.code} ${found.path}`)).toEqual([code]);
  });
});

describe("laps for each layer", () => {
  const DECK = { layers: ["e-136", "e-136"], lapsM: [0, 0.05] };

  it("end the inner layer at the rail's widest line and lap the outer one", () => {
    const layup = build({ ...POLYESTER, deck: DECK });
    const [inner, outer] = layup.pieces.filter(({ face }) => face === "deck");
    expect(inner?.lapAreaM2).toBe(0);
    expect(outer?.lapAreaM2).toBeCloseTo(0.05 * layup.railLineM, 12);
    expect(layup.patterns.map(({ id }) => id)).toEqual(["bottom", "deck", "deck-2"]);
    const glass = (id: string) => layup.zones.find((zone) => zone.id === id)?.glassArealMassKgM2 ?? 0;
    expect(glass("lap-bottom")).toBeCloseTo(2 * 0.135623, 5);
  });

  it("are one for each layer", () => {
    expect(faults({ ...POLYESTER, deck: { ...DECK, lapsM: [0.05] } }).found).toEqual([
      "blocker layup.laps-per-layer glass.deck.laps",
    ]);
  });
});

function withPatch(extent: { fromTailM: number; toM: number; widthM?: number }): GlassInput {
  return { ...POLYESTER, patches: [{ face: "deck", cloth: "e-136", ...extent }] };
}

describe("coats", () => {
  it("names them as the contract does", () => {
    expect(idsOf(build({ ...POLYESTER, finish: "gloss" }, PU, QUAD).coats)).toEqual([
      "laminate-bottom",
      "laminate-deck",
      "fill-bottom",
      "fill-deck",
      "boxes",
      "leash-plug",
      "gloss-bottom",
      "gloss-deck",
    ]);
    expect(idsOf(build(EPOXY, EPS).coats).slice(0, 2)).toEqual(["seal-bottom", "seal-deck"]);
  });

  it("keeps poured, run-off, weave, styrene and film apart in a fill coat", () => {
    const fill = build(POLYESTER).coats.find(({ id }) => id === "fill-deck");
    expect(idsOf(fill?.terms ?? [])).toEqual([
      "net-film",
      "in-weave",
      "run-off",
      "styrene-lost",
      "left-on-tools",
      "left-in-cups",
    ]);
  });

  it("lays a net film that the trade knows: 150 to 250 g/m² for a fill, 80 to 150 for a gloss coat (common practice, no source)", () => {
    for (const cloth of ["e-136", "e-203"]) {
      const faces = { bottom: { layers: [cloth] }, deck: { layers: [cloth] } };
      const { coats } = build({ resin: "polyester", ...faces, finish: "gloss" });
      const net = (id: string) => {
        const coat = coats.find((candidate) => candidate.id === id)!;
        return coat.terms.find((term) => term.id === "net-film")!.massKg / coat.areaM2;
      };
      expect(net("fill-deck")).toBeGreaterThan(0.15);
      expect(net("fill-deck")).toBeLessThan(0.25);
      expect(net("gloss-deck")).toBeGreaterThan(0.08);
      expect(net("gloss-deck")).toBeLessThan(0.15);
    }
  });

  it("drinks more into bare EPS than into sealed, and says so", () => {
    const bare = buildLayup({ glass: { ...EPOXY, seal: false }, blank: EPS }, shape);
    const termKg = (plan: LayupPlan | null) =>
      plan?.coats.find(({ id }) => id === "laminate-deck")?.terms.find(({ id }) => id === "into-foam")
        ?.massKg ?? 0;
    expect(termKg(bare.value)).toBeGreaterThan(2 * termKg(build(EPOXY, EPS)));
    expect(bare.findings.map(({ code }) => code)).toEqual(["layup.eps-unsealed"]);
    expect(idsOf(bare.value?.coats ?? [])).not.toContain("seal-deck");
  });

  it("loses no styrene from epoxy", () => {
    const lost = build(EPOXY, EPS).coats.flatMap(({ terms }) =>
      terms.filter(({ id }) => id === "styrene-lost"),
    );
    expect(lost.length).toBeGreaterThan(0);
    expect(lost.every(({ massKg }) => massKg === 0)).toBe(true);
  });

  it("doses glassed-on fins by their cloth and corners, from the laminating resin, and says what it took", () => {
    const stage = buildLayup({ glass: POLYESTER, blank: PU, fins: { ...QUAD, boxes: "glassed-on" } }, shape);
    const coat = stage.value?.coats.find(({ id }) => id === "boxes");
    // By hand: four fins, 2 × 2 layers of 135.623 g/m² on 0.62 × 0.11 × 0.115 + 0.04 × 0.19 m² each; corners (1 − π/4) 8² mm²
    // along 8 × 0.11 m at 1200 kg/m³.
    const glassKg = 16 * 0.135623 * (0.62 * 0.11 * 0.115 + 0.04 * 0.19);
    const cornersKg = (1 - Math.PI / 4) * 64e-6 * 0.88 * 1200;
    const termKg = (id: string) => coat?.terms.find((term) => term.id === id)?.massKg ?? Number.NaN;
    expect(termKg("in-glass")).toBeCloseTo(glassKg, 6);
    expect(termKg("in-corners")).toBeCloseTo(cornersKg, 9);
    expect(coat?.kind).toBe("laminate");
    expect(coat?.resinMassKg).toBeCloseTo((glassKg + cornersKg) / 0.95 / 0.96 + 0.02 / 0.96, 6);
    expect(stage.findings).toEqual([]);
    expect(stage.assumptions.map(({ value }) => value).join()).toContain("glassed-on fins");
    expect(stage.value?.coats.find(({ id }) => id === "laminate-bottom")).toEqual(
      build(POLYESTER).coats.find(({ id }) => id === "laminate-bottom"),
    );
  });

  it("gives two boxes to a fin off the rail and one to a fin on the centreline", () => {
    const tri: FittingsInput = {
      arrangement: "tri",
      set: [
        { fin: "front", fromTailM: 0.28, fromRailM: 0.03 },
        { fin: "centre", fromTailM: 0.09 },
      ],
    };
    expect(idsOf(build(POLYESTER, PU, tri).fittings)).toEqual(["front-left", "front-right", "centre"]);
  });
});

describe("layers", () => {
  it("warns of a bare side and still fills it", () => {
    const { value, found } = faults({ ...POLYESTER, bottom: { layers: [] } });
    expect(found).toEqual(["warning layup.no-layers glass.bottom.layers"]);
    expect(idsOf(value?.coats ?? [])).toEqual(["laminate-deck", "fill-bottom", "fill-deck"]);
  });

  it("says every default it takes", () => {
    const stage = buildLayup(
      { glass: { resin: "polyester", bottom: { layers: ["e-136"] } }, blank: PU, fins: QUAD },
      shape,
    );
    const paths = stage.assumptions.map(({ path }) => path);
    for (const path of [
      "glass.bottom.lap",
      "glass.lapKind",
      "glass.finish",
      "glass.resinRatio",
      "fins.set[0].box",
    ]) {
      expect(paths).toContain(path);
    }
  });

  it("has the contract's zones and one for each box, thickest where laps overlap", () => {
    const { zones } = build(POLYESTER, PU, QUAD);
    const ids = [
      "deck",
      "deck-foot",
      "bottom",
      "rail-left",
      "rail-right",
      "lap-deck",
      "lap-bottom",
      "tail",
      "nose",
    ];
    expect(idsOf(zones)).toEqual([...ids, "box-1", "box-2", "box-3", "box-4"]);
    const skinM = Object.fromEntries(zones.map(({ id, laminateThicknessM }) => [id, laminateThicknessM]));
    expect(skinM["rail-left"]).toBeCloseTo(skinM.deck! + skinM.bottom!, 12);
    expect(skinM["lap-bottom"]).toBeCloseTo(skinM.deck! + skinM.bottom!, 12);
  });

  it("counts a tail patch under the back foot and not in the middle", () => {
    const { zones } = build({
      ...POLYESTER,
      patches: [{ face: "deck", cloth: "e-136", fromTailM: 0, toM: 0.6 }],
    });
    const glass = Object.fromEntries(zones.map(({ id, glassArealMassKgM2 }) => [id, glassArealMassKgM2]));
    expect(glass["deck-foot"]! / glass.deck!).toBeCloseTo(1.5, 12);
    expect(glass.tail! / glass.nose!).toBeCloseTo(4 / 3, 12);
  });

  it("does not thicken the deck by a narrow strip down its middle", () => {
    const strip = { face: "deck" as const, cloth: "e-136", fromTailM: 0, toM: 1.7, widthM: 0.06 };
    const { zones, pieces } = build({ ...POLYESTER, patches: [strip] });
    expect(zones.find(({ id }) => id === "deck")?.glassArealMassKgM2).toBeCloseTo(0.27125, 4);
    expect(pieces.at(-1)?.widthM).toBeCloseTo(0.06, 12);
  });
});

it("a patch over the whole face has the face's own area, whatever the strips miss", () => {
  const cylinder = makeHalfCylinder(1.5, 0.2);
  for (const body of [shape, cylinder]) {
    const glass: GlassInput = {
      ...POLYESTER,
      patches: [{ face: "deck", cloth: "e-136", fromTailM: 0, toM: body.plan.lengthTapeM }],
    };
    const patch = buildLayup({ glass, blank: PU }, body).value?.pieces.at(-1);
    expect(patch?.areaM2).toBeCloseTo(body.plan.deckAreaM2, 12);
  }
});
