import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatCsvProblems, formatSurveyCsv, parseSurveyCsv } from "../../src/csv";
import type { BoardFile } from "../../src/file/BoardFile";
import type { StationFile } from "../../src/file/SurveyFile";
import { formatBoardFile } from "../../src/formatBoardFile";
import { readBoardFile } from "../../src/readBoardFile";
import { boardFromFile } from "../../src/si/boardFromFile";
import { CSV_BOARDS, QUAD, withStations } from "./csvBoards";

const RUNS = { seed: 20261125, numRuns: 80 };

/** What a file read into the quad gives: its stations in SI, or the problems as lines. */
function readInto(csv: string, into: BoardFile = QUAD) {
  const read = parseSurveyCsv(csv, into);
  return read.ok ? boardFromFile(read.file).survey : formatCsvProblems(read.problems);
}

const stationsOf = (csv: string) => {
  const read = readInto(csv);
  if (typeof read === "string") throw new Error(read);
  return read.stations;
};

/** Lengths as builders write them: ticks of an inch, feet, decimals, millimetres and what fits neither. */
const length = (mostMm: number) =>
  fc.oneof(
    fc.integer({ min: 0, max: mostMm * 10 }).map((tenths) => `${tenths / 10} mm`),
    fc.integer({ min: 0, max: mostMm }).map((mm) => `${mm / 10} cm`.replace(".", ",")),
    fc
      .record({
        whole: fc.integer({ min: 1, max: Math.floor(mostMm / 25.4) - 1 }),
        sixteenths: fc.constantFrom(1, 3, 5, 11, 15),
      })
      .map(({ whole, sixteenths }) => `${whole} ${sixteenths}/16 in`),
    fc.integer({ min: 1, max: Math.floor(mostMm / 25.4) - 1 }).map((whole) => `${whole} 1/3"`),
    fc.integer({ min: 3, max: Math.floor(mostMm / 25.4) }).map((whole) => `+${whole}″`),
  );

/** Station by station farther from the tail, so that none stands twice. */
const survey = fc
  .array(
    fc.record({
      left: length(300),
      right: length(300),
      thickness: length(90),
      rocker: fc.option(length(120)),
    }),
    { minLength: 1, maxLength: 12 },
  )
  .map((readings) =>
    readings.map(
      ({ left, right, thickness, rocker }, i): StationFile => ({
        [i % 3 === 2 ? "fromNose" : "fromTail"]: i % 2 === 0 ? `${3 + i} 1/3 in` : `${80 + 25 * i + 0.5} mm`,
        ...(i % 4 === 3 ? { width: "15 7/8 in" } : { left, right }),
        ...(i % 5 === 4 ? {} : { thickness }),
        ...(rocker === null ? {} : { rocker }),
      }),
    ),
  );

describe("a survey as CSV", () => {
  it.each(CSV_BOARDS)("$name: comes back the same", (file) => {
    const csv = formatSurveyCsv(file);
    expect(readInto(csv, withStations(file, []))).toEqual(boardFromFile(file).survey);
    for (const units of ["inch", "mm"] as const)
      expect(readInto(formatSurveyCsv(file, units), file)).toEqual(boardFromFile(file).survey);
  });

  it("comes back the same to the last bit, whatever was written", () => {
    fc.assert(
      fc.property(survey, fc.constantFrom("inch", "mm"), (stations, units) => {
        const file = withStations(QUAD, stations);
        // Two readings may contradict each other (thicker than wide): such a board file is refused itself.
        fc.pre(readBoardFile(formatBoardFile(file)).ok);
        expect(readInto(formatSurveyCsv(file, units))).toEqual(boardFromFile(file).survey);
      }),
      RUNS,
    );
  });

  it("is plain RFC 4180: a header, CRLF, a decimal point, as many cells in each row", () => {
    const lines = formatSurveyCsv(QUAD).split("\r\n");
    expect(lines[0]).toBe(
      "from tail (in),from nose (in),left half-width (in),right half-width (in),whole width (in),thickness (in),rocker (in),board length (in)",
    );
    expect(lines[1]).toBe("3,,4.375,4.375,,0.875,1.9375,70");
    expect(lines[6]).toBe(",24,8.75,8.6875,,2.25,0.375,");
    expect(lines.at(-1)).toBe("");
    expect(formatSurveyCsv(QUAD)).not.toMatch(/[^\r]\n|[^\x20-\x7e\r\n]/);
  });

  it("keeps as text what its unit cannot hold exactly, and guards it from being run", () => {
    const stations = [
      { fromTail: "300 mm", left: "7 1/3 in", right: "186 mm", thickness: '2 1/4"', rocker: "+1/3 in" },
    ];
    const csv = formatSurveyCsv(withStations(QUAD, stations), "inch");
    expect(csv).toContain(`300 mm,,7 1/3 in,186 mm,,2.25,"'+1/3 in"`);
    expect(stationsOf(csv)[0]).toEqual(boardFromFile(withStations(QUAD, stations)).survey.stations[0]);
  });

  it("leaves everything else of the board file as it was", () => {
    const read = parseSurveyCsv(formatSurveyCsv(QUAD), QUAD);
    expect(read).toMatchObject({ ok: true, file: { fins: QUAD.fins, record: QUAD.record, name: QUAD.name } });
  });
});

const HEADER = "from tail (mm),left half-width (mm),right half-width (mm),thickness (mm),rocker (mm)";

describe("a survey from a spreadsheet", () => {
  it("takes bare numbers in the column's unit, and cells with a unit of their own", () => {
    const [station] = stationsOf(`${HEADER}\n300,186,7 3/8 in,43.5,"1"""\n`);
    expect(station).toEqual({
      fromTailM: 0.3,
      leftM: 0.186,
      rightM: 7.375 * 0.0254,
      thicknessM: 0.0435,
      rockerM: 0.0254,
    });
  });

  it("takes fractions in an inch column, columns in any order, capitals, empty columns and notes", () => {
    const csv = 'Thickness (in),Notes,FROM TAIL (in),whole width (in),\r\n1 5/8,"soft, here",12,14½,\r\n\r\n';
    expect(stationsOf(csv)).toEqual([
      { fromTailM: 12 * 0.0254, widthM: 14.5 * 0.0254, thicknessM: 1.625 * 0.0254 },
    ]);
  });

  it("takes semicolons with decimal commas, as a German spreadsheet writes them, and a byte order mark", () => {
    const csv = `\ufeff${HEADER.replaceAll(",", ";")}\r\n304,8;186,125;187;43,5;25\r\n`;
    expect(stationsOf(csv)).toEqual([
      { fromTailM: 0.3048, leftM: 0.186125, rightM: 0.187, thicknessM: 0.0435, rockerM: 0.025 },
    ]);
  });

  it("takes the board's length once", () => {
    const read = readInto("from nose (in),whole width (in),board length\n12,14,6'2\"\n24,18,\n");
    expect(read).toMatchObject({ lengthM: expect.closeTo(74 * 0.0254, 12) });
  });

  it.each([
    ["nothing", "", /^the file: read nothing; the file is empty/],
    ["a header alone", HEADER, /row 1: read no stations; a row for each station/],
    ["no place", "whole width (in)\n14", /row 1: read the columns; a column is missing, "from tail \(in\)"/],
    ["no widths", "from tail (in),thickness (in)\n3,1", /columns are missing: "left half-width \(in\)"/],
    [
      "a slip in a name",
      "from tail (in),whole widht (in)\n3,9",
      /row 1: read "whole widht \(in\)"; .*was "whole width" meant\?/,
    ],
    [
      "a name nobody knows",
      "from tail (in),whole width (in),colour\n3,9,red",
      /"colour"; no column .*name it "notes"/,
    ],
    [
      "a wrong unit",
      "from tail (kg),whole width (in)\n3,9",
      /row 1, from tail \(kg\): read "kg"; no unit of length: write \(in\)/,
    ],
    [
      "one column twice",
      "from tail (in),whole width (in),From Tail\n3,9,3",
      /row 1, From Tail: read this column twice/,
    ],
    [
      "words in a number",
      `${HEADER}\n300,186,about 7,43,1`,
      /row 2, right half-width \(mm\): read "about 7"; .*number was expected/,
    ],
    [
      "a wrong unit in a cell",
      `${HEADER}\n300,186,187,43 kg,1`,
      /row 2, thickness \(mm\): read "43 kg"; .*unit of a mass/,
    ],
    [
      "a number without a unit",
      "from tail,whole width (in)\n3,9",
      /row 2, from tail: read "3"; no unit: 3 in .* Say it in the column's name/,
    ],
    [
      "a date for a fraction",
      "from tail (in),whole width (in),thickness (in)\n3,9,07. Aug",
      /row 2, thickness \(in\): read "07. Aug"; a spreadsheet made a date/,
    ],
    [
      "one station twice",
      `${HEADER}\n300,186,187,43,1\n\n30 cm,185,187,43,1`,
      /row 4, from tail \(mm\): read "30 cm"; row 2 is the same station/,
    ],
    [
      "one station from both ends",
      "from tail (in),from nose (in),whole width (in)\n20,,18\n,50,18",
      /row 3, from nose \(in\): .*row 2 is the same station/,
    ],
    ["a cell too many", `${HEADER}\n304,8,186,187,43,5`, /row 2: read 6 cells; row 1 names 5 columns/],
    ["an open quote", `${HEADER}\n300,"186,187,43,1`, /row 2: read a quote mark; it opens a cell/],
    [
      "commas beside points",
      `${HEADER.replaceAll(",", ";")}\n304,8;186.5;187;43;1`,
      /row 2, left half-width \(mm\): read "186\.5"; a decimal point here and a decimal comma in row 2, "304,8"/,
    ],
    [
      "a comma of either kind",
      `${HEADER}\n"1,300",186,187,43,1`,
      /row 2, from tail \(mm\): read "1,300"; .*could be 1300 or 1\.300/,
    ],
    [
      "a reading out of bounds",
      `${HEADER}\n300,1860,187,43,1`,
      /row 2, left half-width \(mm\): read "1860 mm"; more than 0\.75 m/,
    ],
    [
      "a station off the board",
      `${HEADER}\n3000,186,187,43,1`,
      /row 2, from tail \(mm\): read "3000 mm"; outside the board/,
    ],
    [
      "one side alone",
      `${HEADER}\n300,186,,43,1`,
      /row 2, right half-width \(mm\): read nothing; "left" was read without "right"/,
    ],
    [
      "two lengths",
      "from tail (in),whole width (in),board length (in)\n3,9,70\n6,12,71",
      /row 3, board length \(in\): read "71 in"; row 2 has another length/,
    ],
    [
      "a length out of bounds",
      "from tail (in),whole width (in),board length (in)\n3,9,700",
      /row 2, board length \(in\): read "700 in"; more than 5 m/,
    ],
  ])("refuses %s by row and column", (_, csv, says) => {
    expect(readInto(csv)).toMatch(says);
  });

  it("says everything at once, and never throws", () => {
    expect(String(readInto(`${HEADER}\nx,186,y,43,1`)).split("\n")).toHaveLength(2);
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 200 }), (csv) => {
        expect(parseSurveyCsv(csv, QUAD).ok).toBe(false);
      }),
      RUNS,
    );
  });
});
