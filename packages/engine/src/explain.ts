import type { Board } from "./Board";
import { describeKey } from "./foundation/describeKey";
import type { Quantity } from "./foundation/quantity";
import type { Assumption, Finding, Told, Working, WorkingInput } from "./foundation/stage";
import type { Plan } from "./Plan";
import { type PlanPlace, readPlanPath } from "./readPlanPath";
import { SOURCES, type Source } from "./sources/sources";
import { WORKINGS, type WorkingContext } from "./workings";

/** How one number of the plan came about. */
export interface Explanation {
  readonly path: string;
  readonly value: Quantity | Told;
  readonly words: Told;
  readonly formula: Told;
  readonly inputs: readonly WorkingInput[];
  readonly sources: readonly Source[];
  /** What was assumed in the part of the board file or plan that it comes from. */
  readonly assumptions: readonly Assumption[];
  readonly findings: readonly Finding[];
}

/** The parts of the board file that each part of the plan is built from. */
const BUILT_FROM: Readonly<Record<string, readonly string[]>> = {
  shape: ["survey", "shape"],
  finset: ["fins", "finset", "survey"],
  layup: ["glass", "blank", "layup"],
  cutplan: ["shop.rolls", "glass", "cutplan"],
  mix: ["shop", "mix", "glass"],
  sanding: ["sanding", "glass", "shop.experience", "record", "blank.stringer"],
  byWeight: ["blank", "survey.section"],
  weight: ["blank", "glass", "weight"],
  cost: ["shop.prices", "shop.rolls", "cost"],
  weighins: ["shop.scale", "record", "weighins"],
  steps: ["shop", "steps"],
  repairs: ["record", "repairs", "glass"],
  calendar: ["shop", "record", "calendar"],
  water: ["record", "water"],
};

/**
 * The working of one number: formula, inputs with units, sources, assumptions.
 * Takes the board, its plan, and a path such as `finset.marks[front-left].toeRad`; returns a message where there is no
 * such place or no number at it.
 */
export function explain(board: Board, plan: Plan, path: string): Explanation | { readonly message: string } {
  const place = readPlanPath(plan, path);
  if ("message" in place) return isTyped(plan, path) ? { message: `${path}: ${TYPED}` } : place;
  const working = findWorking(place.pattern);
  if (working === undefined) return { message: `${path}: ${sayWhyNot(place.value)}` };
  const part = path.split(/[.[]/)[0]!;
  const from = working.assumes?.({ plan, board }, place.ids) ?? BUILT_FROM[part] ?? [];
  return {
    path,
    value: typeof place.value === "number" ? describeKey(place.key, place.value) : sayValue(place.value),
    words: working.words,
    formula: working.formula,
    inputs: [...working.inputs({ plan, board }, place.ids), ...listBand(place)],
    sources: [...working.sources, ...(working.sourcesOf?.({ plan, board }, place.ids) ?? [])].map(
      (id) => SOURCES[id],
    ),
    assumptions: plan.assumptions.filter((a) => from.some((start) => isWithin(a.path, start))),
    findings: plan.findings.filter((f) => isWithin(path, f.path) || isWithin(f.path, path)),
  };
}

const TYPED =
  "this is typed in the board file; ask for a number of the plan that follows from it, such as finset.marks[front-left].toeRad";
const BOARD_PARTS = ["name", "order", "survey", "blank", "glass", "fins", "shop", "record", "materials"];

/** Whether a path is one of the board file, and not of the plan. */
function isTyped(plan: Plan, path: string): boolean {
  const part = path.split(/[.[]/)[0]!;
  return BOARD_PARTS.includes(part) && !Object.hasOwn(plan, part);
}

/** The band beside a predicted number: `fooLowX` and `fooHighX` stand beside `fooX`. */
function listBand({ key, holder }: PlanPlace): WorkingInput[] {
  if (typeof holder !== "object" || holder === null) return [];
  const [, name, unit] = /^(.*?)((?:Kg)?M[23]?|Kg|K|S|Rad|Ratio|Share)?$/.exec(key) ?? [];
  return (["Low", "High"] as const).flatMap((end) => {
    const value = (holder as Record<string, unknown>)[`${name}${end}${unit ?? ""}`];
    if (typeof value !== "number") return [];
    return [{ name: BAND_ENDS[end], value: describeKey(key, value) }];
  });
}

const BAND_ENDS = { Low: "low, about nine times in ten", High: "high, about nine times in ten" } as const;

/** The working kept for a pattern such as `finset.marks[].toeRad`. */
function findWorking(pattern: string): Working<WorkingContext> | undefined {
  for (const table of WORKINGS) if (Object.hasOwn(table, pattern)) return table[pattern];
  return undefined;
}

/** Whether a place of the plan or the board file is another, or stands somewhere in it. */
function isWithin(path: string, around: string): boolean {
  return path === around || path.startsWith(`${around}.`) || path.startsWith(`${around}[`);
}

function sayValue(value: unknown): string {
  return value === null ? "not known" : String(value);
}

function sayWhyNot(value: unknown): string {
  if (typeof value === "object" && value !== null) {
    const below = Object.keys(value).filter((key) => key !== "length");
    return `this is a part of the plan, not a number; name one below it: ${below.join(", ")}`;
  }
  return value === null
    ? "this part of the plan is not built; see the findings"
    : "this is no number, so there is no working";
}
