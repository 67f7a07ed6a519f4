import { mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DEMO_BOARDS } from "@lapline/contract";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { runHere } from "./runHere";

const [DEMO] = DEMO_BOARDS;
if (DEMO === undefined) throw new Error("there is no demo board");

let folder: string;
let board: string;
let out: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "lapline-csv-"));
  board = join(folder, "board.json");
  await writeFile(board, DEMO.text);
});
beforeEach(async () => {
  out = await mkdtemp(join(folder, "out-"));
});
afterAll(() => rm(folder, { recursive: true }));

describe("lapline csv", () => {
  test("writes the survey, and a board file with the same plan from it", async () => {
    const csv = join(out, "survey.csv");
    expect(await runHere(["csv", board, "--of", "survey", "-o", csv])).toEqual({
      code: 0,
      out: csv,
      err: expect.stringMatching(/^Not for water: /),
    });
    const back = join(out, "back.json");
    const words = ["csv", board, "--of", "survey", "--from", csv, "-o", back];
    expect(await runHere(words)).toEqual({
      code: 0,
      out: back,
      err: expect.stringMatching(/^Not for water: /),
    });
    const plans = [board, back].map((file) => runHere(["plan", file, "--json"]));
    const [one, two] = await Promise.all(plans);
    expect(two?.out).toBe(one?.out);
    expect(await readdir(out)).toEqual(["back.json", "survey.csv"]);
  });

  test("writes the marks, and takes back what was measured beside them", async () => {
    const csv = join(out, "marks.csv");
    expect((await runHere(["csv", board, "--of", "marks", "--units", "mm", "-o", csv])).code).toBe(0);
    const lines = (await readFile(csv, "utf8")).split("\r\n");
    // The first fin was measured on the fill coat, by trailing mark and cant.
    const measured = (lines[1] ?? "").replace(/,,,,,,$/, ",292,148.5,,,6,fill");
    expect(measured).toMatch(/^front,left,.*,fill$/);
    await writeFile(csv, [lines[0], measured, ...lines.slice(2)].join("\r\n"));
    const back = join(out, "back.json");
    const result = await runHere(["csv", board, "--of", "marks", "--from", csv, "-o", back]);
    expect(result).toMatchObject({ out: back, err: expect.stringMatching(/^Not for water: /) });
    expect(JSON.parse(await readFile(back, "utf8")).fins.asSet).toEqual([
      {
        fin: "front",
        side: "left",
        on: "fill",
        trailing: { fromTail: "292 mm", fromCentreline: "148.5 mm" },
        cant: "6 deg",
      },
    ]);
  });

  test("takes the table from standard input", async () => {
    const back = join(out, "back.json");
    const table =
      "from tail (cm),whole width (cm),thickness (cm),rocker (cm)\n30,37,4,2.5\n90,48,6,0\n150,37,4,5\n";
    const result = await runHere(["csv", board, "--of", "survey", "--from", "-", "-o", back], table);
    expect(result).toMatchObject({ out: back, err: expect.stringMatching(/^Not for water: /) });
    expect(JSON.parse(await readFile(back, "utf8")).survey.stations[0]).toEqual({
      fromTail: "30 cm",
      width: "37 cm",
      thickness: "4 cm",
      rocker: "2.5 cm",
    });
  });
});

describe("what is refused, with nothing written", () => {
  const from = (table: string | Uint8Array) =>
    runHere(["csv", board, "--of", "survey", "--from", "-", "-o", join(out, "x.json")], table);

  test.each([
    ["an empty file", "", /the file is empty/],
    ["a missing column", "from tail (in),thickness (in)\n3,1", /columns are missing/],
    ["a bad number", "from tail (in),whole width (in)\n3,wide", /row 2, whole width \(in\): read "wide"/],
    ["another encoding", Uint8Array.from([0x66, 0xfc, 0x72]), /standard input is not text\. .*CSV UTF-8/],
  ])("%s, by row and column", async (_, table, says) => {
    const result = await from(table);
    expect(result).toMatchObject({ code: 2, out: "" });
    expect(result.err).toMatch(says);
    expect(await readdir(out)).toEqual([]);
  });

  test.each([
    [["-o", "OUT.csv"], /needs --of survey\|marks/],
    [["--of", "fins", "-o", "OUT.csv"], /--of is survey or marks/],
    [["--of", "survey", "-o", "OUT.json"], /ends in \.csv/],
    [["--of", "survey", "--from", "IN.csv", "-o", "OUT.csv"], /ends in \.json/],
    [["--of", "survey", "--from", "IN.csv", "-o", "BOARD"], /a file that is read/],
    [["--of", "survey", "--from", "IN.csv", "--units", "mm", "-o", "OUT.json"], /says its units itself/],
    [
      ["--of", "survey", "--from", "IN.csv", "-o", "OUT.json"],
      /Cannot read .*IN\.csv: there is no such file/,
    ],
  ])("%j", async (words, says) => {
    const named = words.map((word) =>
      word.replace("BOARD", board).replace("OUT", join(out, "x")).replace("IN", join(out, "IN")),
    );
    const result = await runHere(["csv", board, ...named]);
    expect(result).toMatchObject({ code: 2, out: "" });
    expect(result.err).toMatch(says);
    expect(await readdir(out)).toEqual([]);
    expect(await readFile(board, "utf8")).toBe(DEMO.text);
  });

  test("marks from a file of stations: the strange columns in one line, and those that are read once", async () => {
    const survey = join(folder, "stations.csv");
    await runHere(["csv", board, "--of", "survey", "-o", survey]);
    const words = ["csv", board, "--of", "marks", "--from", survey, "-o", join(out, "x.json")];
    const result = await runHere(words);
    expect(result).toMatchObject({ code: 2, out: "" });
    expect(result.err.match(/read are "/g)).toHaveLength(1);
    expect(result.err).toMatch(
      /row 1: read "[^;]*thickness \(in\)", "rocker \(in\)"[^;]*; no columns of this table/,
    );
    await rm(survey);
  });

  test("marks of a board without fins", async () => {
    const { fins: _, ...without } = JSON.parse(DEMO.text);
    const words = ["csv", "-", "--of", "marks", "-o", join(out, "x.csv")];
    const result = await runHere(words, JSON.stringify(without));
    expect(result).toMatchObject({ code: 2, out: "" });
    expect(result.err).toContain("it has no fins");
    expect(await readdir(out)).toEqual([]);
  });
});
