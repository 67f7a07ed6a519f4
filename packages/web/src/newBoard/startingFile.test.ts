import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { ARRANGEMENTS, parseQuantity, planBuild } from "@lapline/engine";
import { describe, expect, test } from "vitest";
import { copyOfBoard } from "./copyOfBoard";
import { type Answers, startingFile } from "./startingFile";
import { stationPlaces } from "./stationPlaces";

const ANSWERS: Answers = {
  name: "first one",
  length: "6'2\"",
  arrangement: "quad",
  foam: "pu-48",
  resin: "polyester",
};

function planFor(answers: Answers) {
  const read = readBoardFile(JSON.stringify(startingFile(answers, "inch")));
  if (!read.ok) throw new Error(read.problems.map(({ path, message }) => `${path}: ${message}`).join("\n"));
  return planBuild(read.board);
}

describe("a board from three questions", () => {
  test.each([...ARRANGEMENTS, null])("can be read and has an order of work, with %s fins", (arrangement) => {
    const plan = planFor({ ...ANSWERS, arrangement });
    expect(plan.steps?.length).toBeGreaterThan(10);
  });

  test("holds no reading, and says what is to be read instead of guessing it", () => {
    const { survey } = startingFile(ANSWERS, "inch");
    for (const station of survey.stations) expect(Object.keys(station)).toHaveLength(1);
    const plan = planFor(ANSWERS);
    expect(plan.shape).toBeNull();
    expect(plan.findings.map(({ code }) => code)).toContain("survey.too-few-stations");
  });

  test("is refused by its own plan where polyester would meet expanded polystyrene", () => {
    const { findings } = planFor({ ...ANSWERS, foam: "eps-20" });
    expect(findings).toContainEqual(
      expect.objectContaining({ severity: "blocker", code: "layup.styrene-on-foam" }),
    );
    const epoxy = planFor({ ...ANSWERS, foam: "eps-20", resin: "epoxy" });
    expect(epoxy.findings.map(({ code }) => code)).not.toContain("layup.styrene-on-foam");
  });
});

describe("the places to hold the tape", () => {
  const metres = (text: string | undefined) => {
    const read = parseQuantity(text ?? "", "length");
    return read.ok ? read.value : Number.NaN;
  };

  test.each([
    [1.2, "inch"],
    [1.88, "inch"],
    [1.88, "mm"],
    [2.8, "inch"],
    [3.66, "mm"],
  ] as const)("of a board of %d m in %s stand in order, apart, and at the middle", (lengthM, units) => {
    const atM = stationPlaces(lengthM, units).map(({ fromTail, fromNose }) =>
      fromTail === undefined ? lengthM - metres(fromNose) : metres(fromTail),
    );
    for (let i = 1; i < atM.length; i += 1) expect((atM[i] ?? 0) - (atM[i - 1] ?? 0)).toBeGreaterThan(0.05);
    expect(atM.some((each) => Math.abs(each - lengthM / 2) < 0.015)).toBe(true);
    expect(atM.length).toBeGreaterThanOrEqual(7);
  });

  test("are those of the trade: 3, 6, 12 and 24 in from both ends and the middle (common practice, no source)", () => {
    expect(stationPlaces(1.8796, "inch")).toEqual([
      { fromTail: "3 in" },
      { fromTail: "6 in" },
      { fromTail: "12 in" },
      { fromTail: "2'0\"" },
      { fromTail: "3'1\"" },
      { fromNose: "2'0\"" },
      { fromNose: "12 in" },
      { fromNose: "6 in" },
      { fromNose: "3 in" },
    ]);
  });
});

describe("a board like an old one", () => {
  const old = DEMO_BOARDS[0]?.file;
  if (old === undefined) throw new Error("no demo board");

  test("leaves what happened to the old one behind, and its readings unless they are asked for", () => {
    const copy = copyOfBoard(old, { name: "another", readings: false });
    expect(copy).toMatchObject({ name: "another", glass: old.glass, blank: { foam: "pu-48" } });
    expect(copy).not.toHaveProperty("record");
    expect(copy).not.toHaveProperty("order");
    expect(copy.blank).not.toHaveProperty("shapedMass");
    expect(copy.shop).not.toHaveProperty("start");
    expect(copy.survey.stations).toHaveLength(old.survey.stations.length);
    for (const station of copy.survey.stations) expect(Object.keys(station)).toHaveLength(1);
    expect(readBoardFile(JSON.stringify(copy)).ok).toBe(true);
  });

  test("keeps the readings for a blank shaped alike", () => {
    expect(copyOfBoard(old, { name: "another", readings: true }).survey).toEqual(old.survey);
  });
});
