import { DEMO_BOARDS, readBoardFile, readShelfItem } from "@lapline/contract";
import { parseSurveyCsv } from "@lapline/contract/csv";
import { type Phrase, parseQuantity } from "@lapline/engine";
import { tellPhrase } from "@lapline/present";
import { describe, expect, test } from "vitest";
import { DE } from "../packages/present/src/language/de";
import { keyOfPhrase } from "../packages/present/src/language/keyOfPhrase";

const GERMAN = { units: "mm", language: "de" } as const;
const demo = () => JSON.parse(DEMO_BOARDS[0]?.text ?? "");

/** The sentences of a sentence, itself too, that have no German. */
function untold(says: Phrase): readonly string[] {
  const key = keyOfPhrase(says);
  const own = /\p{L}/u.test(key.replace(/\{\d+\}/g, "")) && !Object.hasOwn(DE, key) ? [key] : [];
  return [
    ...own,
    ...says.flatMap((part) => (typeof part !== "string" && "phrase" in part ? untold(part.phrase) : [])),
  ];
}

/** What a builder may type at the fields of each part, by its place. */
const TYPED: ReadonlyArray<readonly [path: string, typed: readonly unknown[]]> = [
  ["name", ["", "x".repeat(201), "two\nlines"]],
  [
    "order",
    [{ riderMass: "5 kg" }, { riderMass: "80" }, { rider: "" }, { serial: "x".repeat(300) }, { ridder: "a" }],
  ],
  [
    "survey.length",
    ["", "5'14\"", "6", "6 kg", "10 m", "-6 ft", "1,450 mm", "6 ft 3 m", "6 ft 1/0 in", "1 / in", 72, null],
  ],
  ["survey.stations.0.left", ["11 1/4", "11 1/4 1/2 in", "11. in", "7 5/4 in", "x", "900 mm"]],
  ["survey.stations.0.thickness", ["9 in"]],
  ["survey.stations.0.right", [undefined]],
  ["survey.stations.0.fromTail", ["9 ft", undefined]],
  ["survey.stations.0", [{}, "x"]],
  ["survey.stations", ["x"]],
  ["survey.tail", [{ kind: "sqash" }, "squash", undefined]],
  ["survey.section", [[], "x", { apex: 2, deckFullness: "a", bottomFullness: 2 }]],
  ["blank.foam", ["", 48, "PU 48"]],
  ["glass.resinRatio", ["a", 9]],
  ["glass.bottom", [{ layers: "e-136" }, { layers: ["E 136"], lap: "2" }]],
  [
    "glass.patches",
    [[{ face: "dek", cloth: "e-136" }], [{ face: "deck", cloth: "e-136", fromTail: "900 mm", to: "1 mm" }]],
  ],
  ["glass.resin", [{ laminate: 1 }, 4]],
  ["fins.set.0.cant", ["60 deg", "6", "6 mm"]],
  ["fins.set.0.fromTail", ["20 ft", "20 m"]],
  ["fins.set.0.toe", [{ meets: "frnt" }, { meets: "x" }, {}, { angle: "40 deg" }]],
  ["fins.set.1.fin", ["front", "", undefined]],
  ["fins.arrangement", ["quod"]],
  ["shop.temperature", [{ day: "90 C", night: "8" }, [{ at: "2026-02-30T09:00", air: "18 C" }], 4]],
  ["shop.humidity", ["0.5", "1 %", "-5 %"]],
  ["shop.timeZone", ["CEST", "Europe/Nowhere"]],
  [
    "shop.hours",
    [
      { from: "18:00", to: "9" },
      { from: "18:00", to: "09:00" },
    ],
  ],
  ["shop.stands", [1.5, 0, "a"]],
  ["shop.dropsPerMl", ["a"]],
  ["shop.start", ["tomorrow"]],
  [
    "shop.prices",
    [{ polyster: { price: 1 } }, { zzz: { price: -1 } }, { polyester: { price: 4, pack: "5" } }, 4],
  ],
  [
    "materials",
    [
      { resins: { mine: { kind: "two-part" } } },
      { resins: { mine: { kind: "two-part", ratioByMass: "45:100", ratioByVolume: "1" } } },
    ],
  ],
  ["materials.cloths", [{ mine: { fibre: "glass", mass: "4 oz" } }, { "My cloth": {} }]],
  [
    "record",
    [
      [{ kind: "mixed", coat: "laminate-bottom", base: "10 g", hardener: "20 g", id: "a" }],
      [{ kind: "struck", id: "b", corrects: "z" }],
      "x",
    ],
  ],
];

function withTyped(path: string, typed: unknown): string {
  const document = demo();
  const steps = path.split(".");
  const last = steps.pop() ?? "";
  const at = steps.reduce((part, step) => {
    part[step] ??= {};
    return part[step];
  }, document);
  at[last] = typed;
  return JSON.stringify(document);
}

describe("a slip on the German page", () => {
  test.each(TYPED)("at %s is told in German", (path, typed) => {
    for (const each of typed) {
      const read = readBoardFile(withTyped(path, each));
      if (read.ok) throw new Error(`${path} takes ${JSON.stringify(each)}`);
      expect(read.problems.flatMap(({ says }) => untold(says))).toEqual([]);
    }
  });

  test("in the text of a file is told in German", () => {
    const texts = [
      "",
      "{",
      '{"a": 1, "a": 2}',
      "[[1,]",
      '{"a": "4""}',
      "[".repeat(60),
      '{"format": "x"}',
      "{a: 1}",
      '{"format": "lapline-board/9"}',
    ];
    const says = texts.flatMap((text) => {
      const read = readBoardFile(text);
      return read.ok ? [] : read.problems.map((problem) => problem.says);
    });
    expect(says.length).toBeGreaterThanOrEqual(texts.length);
    expect(says.flatMap(untold)).toEqual([]);
  });

  test("in a table or on the shelf is told in German", () => {
    const head = "from tail (in),left half-width (in),right half-width (in),thickness (in)";
    const tables = [
      "",
      "thickness\n1",
      "from tail (kg),width\n1,2",
      `${head}\n1,2`,
      `${head}\n12,seven,7,1.7\n`,
      `${head}\n12,7-Aug,7,1.7\n`,
      `${head}\n12,7,7,1\n12,7,7,1\n`,
      `${head},lft\n12,7,7,1,2`,
      `"a`,
      "from tail;thickness\n1,5;1.5",
    ];
    const told = tables.map((text) => parseSurveyCsv(text, demo()));
    expect(told.map(({ ok }) => ok)).toEqual(tables.map(() => false));
    const shelf = [
      ...readShelfItem("house-sets", '{"fins": {"asSet": []}, "x": 1}'),
      ...readShelfItem("house-sets", "[]"),
      ...readShelfItem("cloths", '{"fibre": "e-glass", "mass": "4"}'),
      ...readShelfItem("prices", '{"price": "dear"}'),
    ];
    expect(shelf.length).toBeGreaterThan(4);
    const says = [...shelf, ...told.flatMap((read) => (read.ok ? [] : read.problems))].map(
      (each) => each.says,
    );
    expect(says.flatMap(untold)).toEqual([]);
  });

  test("reads as a German sentence", () => {
    const tellIn = (text: string, dimension: "length" | "angle" | "mass") => {
      const read = parseQuantity(text, dimension);
      return read.ok ? "" : tellPhrase(read.says, GERMAN);
    };
    expect(tellIn("11.25", "length")).toBe("ohne Einheit: 11,25 in (285,8 mm) oder 11,25 mm (7/16 in)?");
    expect(tellIn("3 kg", "length")).toBe(
      'Zeichen 3: "kg" ist eine Einheit für ein Gewicht, hier würde in, mm, cm oder ft passen; eine Länge mit Einheit, etwa „11 1/4 in“ schreiben',
    );
    expect(tellIn("1 m 5 in", "length")).toContain('"5 in" kann nicht hinter "1 m" stehen');
    expect(tellIn("-3 g", "mass")).toContain("ein Minus geht nicht für ein Gewicht");
  });
});
