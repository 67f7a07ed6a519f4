import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatCsvProblems, formatMarksCsv, parseMarksCsv } from "../../src/csv";
import type { BoardFile } from "../../src/file/BoardFile";
import type { AsSetFile } from "../../src/file/FinsFile";
import { boardFromFile } from "../../src/si/boardFromFile";
import { CSV_BOARDS, planOf, QUAD, withAsSet } from "./csvBoards";

const RUNS = { seed: 20261125, numRuns: 50 };
const plan = planOf(QUAD);

function readInto(csv: string, into: BoardFile = QUAD) {
  const read = parseMarksCsv(csv, into);
  return read.ok ? (boardFromFile(read.file).fins?.asSet ?? []) : formatCsvProblems(read.problems);
}

const csvOf = (file: BoardFile, units?: "inch" | "mm"): string => {
  const csv = formatMarksCsv(file, planOf(file), units);
  if (csv === null) throw new Error(`${file.name} has no fins`);
  return csv;
};

const across = fc.oneof(
  fc.integer({ min: 500, max: 2500 }).map((tenths) => `${tenths / 10} mm`),
  fc.integer({ min: 2, max: 9 }).map((inches) => `${inches} 1/3 in`),
  fc.constantFrom("7 5/16 in", '4 3/8"', "10,5 cm"),
);
const place = fc.record({ fromTail: across, fromCentreline: across }, { requiredKeys: [] });
const reading = fc
  .record(
    {
      on: fc.constantFrom("foam", "laminate", "fill"),
      trailing: place.filter((each) => Object.keys(each).length > 0),
      leading: place.filter((each) => Object.keys(each).length > 0),
      cant: fc.constantFrom("6 deg", "-1.5 deg", "5,25°"),
    },
    { requiredKeys: ["cant"] },
  )
  .map((each) => each as Omit<AsSetFile, "fin" | "side">);
const asSet = fc
  .tuple(
    fc.subarray(["front left", "front right", "rear left", "rear right"] as const, { minLength: 1 }),
    fc.array(reading, { minLength: 4, maxLength: 4 }),
  )
  .map(([fins, readings]) =>
    fins.map((name, i): AsSetFile => {
      const [fin = "", side] = name.split(" ");
      return { fin, side: side === "left" ? "left" : "right", ...readings[i] };
    }),
  );

describe("the fin marks as CSV", () => {
  it.each(CSV_BOARDS)("$name: a row for each mark, with the plan's figures", (file) => {
    const { finset } = planOf(file);
    const [header, ...rows] = csvOf(file, "mm").trimEnd().split("\r\n");
    expect(header).toMatch(/^fin,side,planned trailing from tail \(mm\),.*,set cant \(deg\),measured on$/);
    expect(rows).toHaveLength(finset?.marks.length ?? 0);
    rows.forEach((row, i) => {
      const mark = finset?.marks[i];
      const [fin, side, fromTail, fromCentreline, , , fromRail, toe, cant, ...set] = row.split(",");
      expect([fin, side, set.join("")]).toEqual([mark?.fin, mark?.side, ""]);
      expect(Number(fromTail)).toBeCloseTo((mark?.trailing.fromTailTapeM ?? 0) * 1000, 2);
      expect(Number(fromCentreline)).toBeCloseTo((mark?.trailing.fromCentrelineM ?? 0) * 1000, 2);
      expect(Number(fromRail)).toBeCloseTo((mark?.trailing.fromRailM ?? 0) * 1000, 2);
      expect(Number(toe)).toBeCloseTo(((mark?.toeRad ?? 0) * 180) / Math.PI, 2);
      expect(Number(cant)).toBeCloseTo(((mark?.cantRad ?? 0) * 180) / Math.PI, 2);
    });
  });

  it("comes back the same to the last bit: fins as set", () => {
    fc.assert(
      fc.property(asSet, fc.constantFrom("inch", "mm"), (measured, units) => {
        const file = withAsSet(QUAD, measured);
        expect(readInto(csvOf(file, units))).toEqual(boardFromFile(file).fins?.asSet);
      }),
      RUNS,
    );
  });

  it("keeps a fin as set that no mark belongs to", () => {
    const measured: AsSetFile[] = [{ fin: "rear", cant: "3 deg" }];
    expect(readInto(csvOf(withAsSet(QUAD, measured)))).toEqual(
      boardFromFile(withAsSet(QUAD, measured)).fins?.asSet,
    );
  });

  it("comes from no board without fins", () => {
    const { fins: _, ...without } = QUAD;
    expect(formatMarksCsv(without, plan)).toBeNull();
  });
});

const HEADER = "fin,side,set trailing from tail (in),set trailing from centreline (in),set cant (deg)";

describe("fins as set from a spreadsheet", () => {
  it("are those with anything measured; the plan's columns are left aside, whatever they hold", () => {
    const csv =
      "fin,side,planned toe (turns),set trailing from tail (in),measured on\nfront,LEFT,?,11 1/2,Fill\nrear,left,?,,\n";
    expect(readInto(csv)).toEqual([
      { fin: "front", side: "left", on: "fill", trailing: { fromTailM: 11.5 * 0.0254 } },
    ]);
  });

  it.each([
    ["no fin's name", "side,set cant (deg)\nleft,6", /row 1: read the columns; the column "fin" is missing/],
    [
      "no column to read",
      "fin,side\nfront,left",
      /row 1: read the columns; a column with what was measured is missing/,
    ],
    [
      "nothing measured",
      `${HEADER}\nfront,left,,,`,
      /the file: read empty cells; nothing was measured: fill in/,
    ],
    [
      "an unknown fin",
      `${HEADER}\nfrunt,left,11,7,6`,
      /row 2, fin: read "frunt"; name a fin of the set: was "front" meant\?/,
    ],
    [
      "an unknown side",
      `${HEADER}\nfront,port,11,7,6`,
      /row 2, side: read "port"; write one of "left", "right"/,
    ],
    ["words in a number", `${HEADER}\nfront,left,11,7,steep`, /row 2, set cant \(deg\): read "steep"/],
    [
      "a distance too far",
      `${HEADER}\nfront,left,11,70,6`,
      /row 2, set trailing from centreline \(in\): read "70 in"; more than 0\.75 m/,
    ],
    [
      "one fin twice",
      `${HEADER}\nfront,left,11,7,6\nfront,left,12,7,6`,
      /row 3, fin: read "front"; row 2 is the same fin/,
    ],
  ])("with %s are refused by row and column", (_, csv, says) => {
    expect(readInto(csv)).toMatch(says);
  });

  it("need fins to hold them against", () => {
    const { fins: _, ...without } = QUAD;
    expect(readInto(`${HEADER}\nfront,left,11,7,6`, without)).toMatch(/no fins; the board file has no fins/);
  });
});
