import { DEMO_BOARDS, LARGEST_BOARD_FILE_BYTES } from "@lapline/contract";
import { expect, test } from "vitest";
import { planOf } from "../plan/planOf";
import { readGivenFile } from "./readGivenFile";
import { startingFile } from "./startingFile";

const BEGUN = startingFile(
  { name: "begun", length: "6 ft", arrangement: null, foam: "pu-48", resin: "polyester" },
  "inch",
);
const PLANNER = { plan: async (text: string) => planOf(text) };
const given = (name: string, text: string) => ({ name, size: text.length, text: async () => text });

test("a board file is taken whole, as it is", async () => {
  const text = DEMO_BOARDS[0]?.text ?? "";
  expect(await readGivenFile(given("board.json", text), BEGUN, PLANNER)).toMatchObject({
    kind: "board",
    text,
  });
});

test("a broken board file is told field by field, and its name serves to begin anew", async () => {
  const broken = (DEMO_BOARDS[0]?.text ?? "").replace('"4 3/8 in"', '"4 3/8"').replace('"pu-48"', "48");
  const read = await readGivenFile(given("board.json", broken), BEGUN, PLANNER);
  if (read.kind !== "faults") throw new Error(read.kind);
  expect(read.faults.map(({ place }) => place)).toEqual(["survey.stations[0].left", "blank.foam"]);
  expect(read.faults.every(({ line, says }) => line !== null && says.length > 0)).toBe(true);
  expect(read.name).toBe("5'10\" quad, squash tail");
  const none = await readGivenFile(given("board.json", "no board"), BEGUN, PLANNER);
  expect(none).toMatchObject({ kind: "faults", name: null });
});

test("a table of readings goes into the board that is begun, its faults by row and column", async () => {
  const head = "from tail (in),left half-width (in),right half-width (in),thickness (in)";
  const good = await readGivenFile(
    given("survey.CSV", `${head}\n12,7,7 1/8,1.7\n36,9.5,9.5,2.4\n`),
    BEGUN,
    PLANNER,
  );
  if (good.kind !== "survey") throw new Error(good.kind);
  expect(good.file.name).toBe("begun");
  expect(good.file.survey.stations).toHaveLength(2);
  const bad = await readGivenFile(given("survey.csv", `${head}\n12,seven,7,1.7\n`), BEGUN, PLANNER);
  if (bad.kind !== "faults") throw new Error(bad.kind);
  expect(bad.faults[0]).toMatchObject({ place: "2, left half-width (in)", line: null });
});

test("what is too large for a board is not read", async () => {
  const large = {
    name: "board.json",
    size: LARGEST_BOARD_FILE_BYTES + 1,
    text: () => Promise.reject(new Error("read")),
  };
  expect(await readGivenFile(large, BEGUN, PLANNER)).toEqual({ kind: "too-large" });
});
