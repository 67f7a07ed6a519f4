import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { planBuild } from "@lapline/engine";
import type { Reader } from "../../src/language/Reader";
import type { JobSheetRequest } from "../../src/paper";
import { PAPER_BOARDS, type PaperBoard, stoppedPlan } from "./paperBoards";

/** Sixty letters, as a customer may want them. */
const LONG_NAME = "The board for rider B's second winter, 5'10\" quad, squash tail";

const demo = JSON.parse(DEMO_BOARDS.find(({ id }) => id === "five-ten-quad")?.text ?? "");

function planOf(file: unknown) {
  const read = readBoardFile(JSON.stringify(file));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return planBuild(read.board);
}

/** Steps, findings and names enough to fill five pages, if they are let. */
function twelveFootSwallow() {
  const file = JSON.parse(DEMO_BOARDS.find(({ id }) => id === "nine-two-long")?.text ?? "");
  const stations = Array.from(file.survey.stations, (station) => {
    const { fromTail, ...rest } = Object(station);
    return fromTail === undefined ? rest : { fromTail: fromTail === "55 in" ? "72 in" : fromTail, ...rest };
  });
  const tail = { kind: "swallow", width: "7 in", depth: "4 in" };
  return { ...file, name: LONG_NAME, survey: { ...file.survey, length: "12'", tail, stations } };
}

/** The paper went to the foam of a side that was filled, and it is not mended yet. */
function sandedThrough() {
  const file = JSON.parse(DEMO_BOARDS.find(({ id }) => id === "nine-two-long")?.text ?? "");
  const spot = {
    shows: "foam",
    face: "deck",
    side: "left",
    fromTail: "20 in",
    fromCentreline: "5 in",
    size: "1 in",
  };
  return {
    ...file,
    record: [...(file.record ?? []), { kind: "sand-through", id: "spot", at: "2026-04-20T10:00", ...spot }],
  };
}

/** Beside the boards of the templates: a long name, one that was only measured, one that a blocker stops. */
export const SHEET_BOARDS: readonly PaperBoard[] = [
  ...PAPER_BOARDS,
  { id: "long-name", plan: planOf({ ...demo, name: LONG_NAME }) },
  { id: "twelve-foot-swallow", plan: planOf(twelveFootSwallow()) },
  { id: "only-measured", plan: planOf({ format: demo.format, name: "Only measured", survey: demo.survey }) },
  { id: "stopped", plan: stoppedPlan() },
];

export const SANDED_THROUGH: PaperBoard = { id: "sanded-through", plan: planOf(sandedThrough()) };

export const READERS: readonly Reader[] = (["inch", "mm"] as const).flatMap((units) =>
  (["en", "de"] as const).map((language) => ({ units, language })),
);

const URL = "http://192.168.1.20:5170/boards/five-ten-quad";

/** What the tests ask the Sheet for. */
export function requestFor(
  { plan }: PaperBoard,
  reader: Reader,
  paper: JobSheetRequest["paper"] = "a4",
): JobSheetRequest {
  return {
    plan,
    reader,
    paper,
    order: { rider: "rider A", serial: "NS-041" },
    url: URL,
    madeOn: { instant: new Date(Date.UTC(2026, 3, 11, 9)), date: "2026-04-11" },
  };
}
