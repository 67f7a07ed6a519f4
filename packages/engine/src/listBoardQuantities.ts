import type { Board } from "./Board";
import { GEL_BAND } from "./constants/gelBand";
import { SURVEY_DEFAULTS } from "./constants/surveyDefaults";

/** A number of the board file, and the same board with it read or set a little larger. */
export interface BoardQuantity {
  /** As the board has it, its unit in its name: `survey.stations[2].leftM`. */
  readonly path: string;
  readonly value: number;
  /** How far it is varied: its uncertainty, or a hundredth of it. */
  readonly step: number;
  varied(): Board;
}

const SHARE = 0.01;
/** Whole numbers, and the uncertainty itself: a hundredth more of them is nothing that happens. */
const NOT_VARIED = /\.(stands|people|tapeM|toleranceM|byS)$/;
/** Lengths laid off or read with a tape. */
const BY_TAPE = /^survey\..*M$|^fins\..*\.(from\w+|overM|offsetM|aimBesideNoseM)$/;

/** Every number of the board under the parts named that can be varied; without names, of all its parts. */
export function listBoardQuantities(board: Board, parts?: readonly string[]): readonly BoardQuantity[] {
  const tapeM = board.survey.tapeM ?? SURVEY_DEFAULTS.tapeM.value;
  return listNumbers(board, [])
    .filter(({ keys }) => parts?.includes(String(keys[0])) ?? true)
    .flatMap(({ keys, value }) => {
      const path = pathOf(keys);
      const step = stepOf(path, value, tapeM);
      const varied = () => replaceAt(board, keys, value + step) as Board;
      return step > 0 ? [{ path, value, step, varied }] : [];
    });
}

type Keys = ReadonlyArray<string | number>;

function stepOf(path: string, value: number, tapeM: number): number {
  if (NOT_VARIED.test(path)) return 0;
  if (BY_TAPE.test(path)) return tapeM;
  return /[a-z]K$/.test(path) ? GEL_BAND.temperatureSdK.value : Math.abs(value) * SHARE;
}

function listNumbers(value: unknown, keys: Keys): ReadonlyArray<{ keys: Keys; value: number }> {
  if (typeof value === "number") return [{ keys, value }];
  if (Array.isArray(value)) return value.flatMap((each, i) => listNumbers(each, [...keys, i]));
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) => listNumbers(each, [...keys, key]));
}

function pathOf(keys: Keys): string {
  return keys.map((key, i) => (typeof key === "number" ? `[${key}]` : i === 0 ? key : `.${key}`)).join("");
}

function replaceAt(value: unknown, [key, ...below]: Keys, number: number): unknown {
  if (key === undefined) return number;
  if (Array.isArray(value))
    return value.map((each, i) => (i === key ? replaceAt(each, below, number) : each));
  const holder = value as Record<string, unknown>;
  return { ...holder, [key]: replaceAt(holder[key], below, number) };
}
