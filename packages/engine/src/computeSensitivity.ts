import type { Board } from "./Board";
import { describeKey } from "./foundation/describeKey";
import { formatDecimal } from "./foundation/formatDecimal";
import type { Quantity } from "./foundation/quantity";
import type { Told } from "./foundation/stage";
import { type BoardQuantity, listBoardQuantities } from "./listBoardQuantities";
import { planBuild } from "./planBuild";
import { readPlanPath } from "./readPlanPath";

/** What one number of the board file does to one number of the plan. */
export interface Influence {
  /** The board file's, as the file has it: `survey.stations[2].left`. */
  readonly path: string;
  /** How much larger it was taken. */
  readonly by: Quantity | Told;
  /** How far the plan's number moves by it, in the plan's own unit. */
  readonly change: number;
  /** The same without its sign, for a person; `change` says whether it grows. */
  readonly moves: Quantity | Told;
}

/** No more plans than this for one number. */
const MOST_PLANS = 250;
/** Less than this share of a number is the arithmetic's own noise. */
const NOISE_SHARE = 1e-9;
/** Parts of the board that bear on a part of the plan, where that is not all of them. */
const BEARS_ON: Readonly<Record<string, readonly string[]>> = {
  shape: ["survey"],
  finset: ["survey", "fins"],
};

/**
 * What would change a number of the plan most, by its path: each quantity of the board file is taken larger by its uncertainty, or by
 * a hundredth where none is known, everything is planned anew, and what moves the number is ranked. All else is held, so two
 * quantities that only matter together do not show. Gives way after each plan, so that a page stays quick; no more than 250 plans.
 */
export function* walkSensitivity(board: Board, path: string): Generator<void, readonly Influence[]> {
  const before = readNumber(board, path);
  if (before === null) return [];
  const influences: Influence[] = [];
  const [part = ""] = path.split(/[.[]/);
  for (const quantity of listBoardQuantities(board, BEARS_ON[part]).slice(0, MOST_PLANS)) {
    yield;
    const after = readNumber(quantity.varied(), path);
    if (after === null) continue;
    const change = after.value - before.value;
    if (Math.abs(change) <= NOISE_SHARE * Math.abs(before.value)) continue;
    influences.push(influenceOf(quantity, before.key, change));
  }
  return influences.sort((a, b) => Math.abs(b.change) - Math.abs(a.change));
}

/** The same at once, for a command. */
export function computeSensitivity(board: Board, path: string): readonly Influence[] {
  const walk = walkSensitivity(board, path);
  for (;;) {
    const { done, value } = walk.next();
    if (done === true) return value;
  }
}

function readNumber(board: Board, path: string): { readonly key: string; readonly value: number } | null {
  const place = readPlanPath(planBuild(board), path);
  return "message" in place || typeof place.value !== "number"
    ? null
    : { key: place.key, value: place.value };
}

const UNIT = /(?:KgM[23]|M[23]|M3S|Kg|Rad|[a-z]K|S|M|Ratio|Share|Fraction)$/;

function influenceOf({ path, step }: BoardQuantity, key: string, change: number): Influence {
  const [holder, last] = [path.slice(0, path.lastIndexOf(".") + 1), path.slice(path.lastIndexOf(".") + 1)];
  const name = last.replace(UNIT, (unit) => (unit.endsWith("K") ? unit.slice(0, -1) : ""));
  return { path: `${holder}${name}`, by: describeStep(last, step), change, moves: describeMove(key, change) };
}

/** A difference of temperatures is told in kelvin: as a temperature it would be read as one. */
function describeStep(key: string, step: number): Quantity | Told {
  return /[a-z]K$/.test(key) ? `${step} K` : describeKey(key, step);
}

function describeMove(key: string, change: number): Quantity | Told {
  const size = Math.abs(change);
  return /[a-z]K$/.test(key) ? `${formatDecimal(size, 1)} K` : describeKey(key, size);
}
