import {
  angle,
  type Finding,
  formatPhrase,
  formatQuantity,
  length,
  mass,
  namePiece,
  type Plan,
  type Quantity,
  say,
  volume,
} from "@lapline/engine";
import { describe, expect, test } from "vitest";
import { barredSentence, formatCheckText, formatPlanText } from "../src";
import { formatBareTapeLength } from "../src/words/formatTapeLength";
import { hardenerAmounts } from "../src/words/hardenerAmounts";
import { DEMO_PLANS } from "./demoPlans";

const UNITS = ["inch", "mm"] as const;
const CASES = DEMO_PLANS.flatMap((demo) => UNITS.map((units) => ({ ...demo, units })));

/** As the page writes it: in plain letters, and with the line breaks taken out. */
function flat(text: string): string {
  return text.replace(/\s+/g, " ");
}

function plain(text: string): string {
  return text
    .replace(/ ?°(?=[CF])/g, " ")
    .replace("°", " deg")
    .replace("²", "2");
}

/** An id is read as words. */
const named = (id: string): string => id.replaceAll("-", " ");

describe.each(CASES)("$id in $units", ({ plan, units }) => {
  const text = formatPlanText(plan, { units, language: "en" });
  const show = (quantity: Quantity): string => plain(formatQuantity(quantity, units));

  test("fits 80 columns and needs no sign but letters and plain signs", () => {
    const lines = text.split("\n");
    expect(lines.filter((line) => line.length > 80)).toEqual([]);
    expect(lines.filter((line) => /\s$/.test(line))).toEqual([]);
    expect(text.match(/[^\n\x20-\x7E\p{L}]/gu)).toBeNull();
  });

  test("follows the build", () => {
    const titles = [...text.matchAll(/^([A-Z][A-Z ,:]+) -+$/gm)].map(([, title = ""]) => title.split(",")[0]);
    const order = [
      "MEASURE",
      "FINS",
      "GLASS",
      "CUT",
      "MIX",
      "SAND",
      "SEAL AND WATER",
      "STEPS",
      "CALENDAR",
      "WEIGHT",
      "COST",
      "FINDINGS",
      "ASSUMED",
    ];
    expect(titles.filter((title) => title !== "STOP")).toEqual(order);
  });

  test("has the plan's figures and no others where it counts", () => {
    const { shape, finset, layup, mix, weight } = plan;
    if (shape === null || finset === null || layup === null || mix === null || weight === null) {
      throw new Error("a demo board has all stages");
    }
    const rows = text.split("\n");
    const rowOf = (id: string, nth = 0): string =>
      rows.filter((row) => row.trim().startsWith(`${named(id)} `))[nth] ?? "";
    const bare = (valueM: number): string => formatBareTapeLength(valueM, { units, language: "en" });
    for (const mark of finset.marks) {
      const cells = rowOf(mark.id)
        .trim()
        .split(/\s{2,}/);
      expect(cells).toEqual([
        named(mark.id),
        bare(mark.trailing.fromTailTapeM),
        bare(mark.trailing.fromCentrelineM),
        bare(mark.trailing.fromRailM),
        bare(mark.leading.fromTailTapeM),
        bare(mark.leading.fromCentrelineM),
      ]);
      expect(rowOf(mark.id, 1)).toContain(show(angle(mark.toeRad)));
    }
    for (const piece of layup.pieces)
      expect(rowOf(formatPhrase(namePiece(piece.id), units))).toContain(show(mass(piece.clothMassKg)));
    for (const coat of layup.coats) expect(rowOf(coat.id)).toContain(show(mass(coat.resinMassKg)));
    for (const coat of mix.coats) {
      const [cup] = coat.cups;
      if (cup === undefined) continue;
      expect(rowOf(coat.id, 1)).toContain(show(mass(cup.baseMassKg)));
      const { byMass, byVolume } = hardenerAmounts(cup);
      expect(rowOf(coat.id, 1)).toContain(show(byMass));
      expect(rowOf(coat.id, 1)).toContain(show(byVolume));
    }
    expect(flat(text)).toContain(show(length(shape.lengthTapeM)));
    expect(rowOf("volume")).toContain(show(volume(shape.volumeM3)));
    for (const { id, widthM } of shape.widths)
      expect(rowOf(`${id.slice(0, 4)} width`)).toContain(show(length(widthM)));
    if (plan.byWeight !== null) expect(rowOf("by the scale")).toContain(show(volume(plan.byWeight.volumeM3)));
    expect(rowOf("finished")).toContain(show(mass(weight.finishedKg)));
  });

  test("gives every step, caution, finding and assumption a place", () => {
    const words = flat(text);
    for (const step of plan.steps ?? []) {
      expect(words).toContain(flat(plain(step.title)));
      for (const caution of step.done ? [] : step.cautions) {
        expect(words).toContain(flat(plain(caution)).split(/[:.]/)[0]);
      }
    }
    for (const finding of plan.findings)
      expect(words.replace(/[ -]/g, "")).toContain(finding.path.replace(/[ -]/g, ""));
    for (const assumption of plan.assumptions) expect(words.replace(/ /g, "")).toContain(assumption.path);
  });

  test("leads no assumption with a path of the program, and names no coat or step by its id", () => {
    const assumed = text.slice(text.indexOf("\nASSUMED"));
    for (const [line] of assumed.matchAll(/^ {2}- .*$/gm))
      expect(line).toMatch(/^ {2}- [\p{L}' -]+(, fin \d of the set)?:/u);
    const sentences = text.replace(/\([a-z][\w.[\]\s-]*\)/g, "");
    const ids = [plan.layup?.coats, plan.steps ?? []].flatMap((list) => (list ?? []).map(({ id }) => id));
    for (const id of ids.filter((each) => each.includes("-"))) expect(sentences).not.toContain(id);
  });
});

describe("a plan that is stopped", () => {
  const [demo] = DEMO_PLANS;
  if (demo === undefined) throw new Error("no demo board");
  const stop: Finding = {
    code: "layup.foam-dissolves",
    severity: "blocker",
    path: "glass.resin",
    text: "",
    says: say`polyester dissolves this foam ${length(0.1)} deep`,
  };
  const note: Finding = {
    ...stop,
    code: "shape.note",
    severity: "note",
    path: "survey",
    says: say`all is well`,
  };
  const stopped: Plan = { ...demo.plan, layup: null, mix: null, steps: null, findings: [note, stop] };

  test("says so at the top, where the stage would be, and first among the findings", () => {
    const text = formatPlanText(stopped, { units: "mm", language: "en" });
    const [head = "", measured = ""] = text.split("MEASURE -");
    expect(head).toContain("BLOCKER: polyester dissolves this foam 100 mm deep (glass.resin)");
    expect(measured).toMatch(/GLASS -+\n {2}polyester dissolves this foam 100 mm deep/);
    expect(text).toMatch(/FINDINGS -+\n {2}BLOCKER:/);
    expect(text).toMatch(/STEPS -+\n {2}Not worked out/);
  });

  test("is a line for each finding to the check, blockers first, in the units asked for", () => {
    expect(formatCheckText(stopped, { units: "inch", language: "en" })).toBe(
      [
        barredSentence(stopped, { units: "inch", language: "en" }),
        "blocker: glass.resin: polyester dissolves this foam 3 15/16 in deep [layup.foam-dissolves]",
        "note: survey: all is well [shape.note]",
        "",
      ].join("\n"),
    );
    const closed = { ...stopped, water: { ready: false, barred: false, open: [], firstSurfAt: null } };
    expect(formatCheckText({ ...closed, findings: [] }, { units: "mm", language: "en" })).toBe(
      "Nothing found.\n",
    );
  });

  test("keeps a very long name within the page", () => {
    const text = formatPlanText(
      { ...stopped, name: "a long name ".repeat(20) + "x".repeat(200) },
      { units: "mm", language: "en" },
    );
    expect(text.split("\n").filter((line) => line.length > 80)).toEqual([]);
  });
});
