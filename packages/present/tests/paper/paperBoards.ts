import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { type Plan, planBuild } from "@lapline/engine";

export interface PaperBoard {
  readonly id: string;
  readonly plan: Plan;
}

/** Tells of its length, and in letters that many a font has not got. */
const LONG_NAME =
  "12 ft glider for rider B, a name that goes on and on until the shed is out of paper, Ägirs långa bräda nr 2, with Łódź and þ and ß in it too, and then some";

/** The demo boards, one of 12 ft with a long name, and one with a swallow tail. */
export const PAPER_BOARDS: readonly PaperBoard[] = [
  ...DEMO_BOARDS.map(({ id, text }) => ({ id, plan: planOf(JSON.parse(text)) })),
  { id: "twelve-foot", plan: planOf(twelveFoot()) },
  { id: "swallow", plan: planOf(swallow()) },
];

const FINS: Readonly<Record<string, readonly string[]>> = {
  "five-box": ["front", "rear", "centre"],
  "twin-trailer": ["front", "centre"],
  twin: ["front"],
  single: ["centre"],
};

/** The arrangements of fins that no demo board has. */
export const ARRANGED_BOARDS: readonly PaperBoard[] = [
  { id: "five-box", plan: planOf(arranged("five-ten-quad", "five-box")) },
  { id: "twin-trailer", plan: planOf(arranged("six-four-tri", "twin-trailer")) },
  { id: "twin", plan: planOf(arranged("six-four-tri", "twin")) },
  { id: "single", plan: planOf(arranged("nine-two-long", "single")) },
];

/** A demo board with its fins set otherwise; what its own set lacks is the tri's centre fin. */
function arranged(demo: string, arrangement: string): Record<string, unknown> {
  const file = demoFile(demo);
  const sets = [file, demoFile("six-four-tri")].map(({ fins }) => Array.from(Object(fins).set, Object));
  const wanted = FINS[arrangement] ?? [];
  const set = wanted.flatMap((fin) => sets.flat().find((each) => each.fin === fin) ?? []);
  return { ...file, name: arrangement, record: [], fins: { ...Object(file.fins), arrangement, set } };
}

/** A demo board that a blocker stands against: polyester over polystyrene foam. */
export function stoppedPlan(): Plan {
  const file = demoFile("six-four-tri");
  file.glass = { ...Object(file.glass), resin: "polyester" };
  return planOf(file);
}

function twelveFoot(): Record<string, unknown> {
  const file = demoFile("nine-two-long");
  const survey = Object(file.survey);
  const stations = Array.from(survey.stations, (station) => {
    const { fromTail, ...rest } = Object(station);
    if (fromTail === undefined) return Object(station);
    return { ...rest, fromTail: fromTail === "55 in" ? "72 in" : fromTail };
  });
  return { ...file, name: LONG_NAME, survey: { ...survey, length: "12'", stations } };
}

function swallow(): Record<string, unknown> {
  const file = demoFile("five-ten-quad");
  const tail = { kind: "swallow", width: "7 in", depth: "4 in" };
  return { ...file, name: "5'10\" swallow quad", survey: { ...Object(file.survey), tail } };
}

function demoFile(id: string): Record<string, unknown> {
  const demo = DEMO_BOARDS.find((each) => each.id === id);
  if (demo === undefined) throw new Error(`there is no demo board ${id}`);
  return JSON.parse(demo.text);
}

function planOf(file: unknown): Plan {
  const read = readBoardFile(JSON.stringify(file));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return planBuild(read.board);
}
