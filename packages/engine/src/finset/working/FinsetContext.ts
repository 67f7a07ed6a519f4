import { angle, length, mass, type Quantity } from "../../foundation/quantity";
import type { Told, Working, WorkingInput } from "../../foundation/stage";
import type { ShapePlan } from "../../shape/ShapePlan";
import type { SourceId } from "../../sources/sources";
import type { FinMark } from "../FinMark";
import type { FinsetPlan } from "../FinsetPlan";
import type { FinInput, FinsInput } from "../FinsInput";

/** What the working of the fins' numbers looks at. */
export interface FinsetContext {
  readonly plan: { readonly finset: FinsetPlan | null; readonly shape: ShapePlan | null };
  readonly board: { readonly fins?: FinsInput };
}

/** The inputs of one number, read off the plan: nothing where the part of the plan is not there. */
type ReadInputs<T> = (part: T, context: FinsetContext, ids: readonly string[]) => readonly WorkingInput[];

export interface Explained<T> {
  readonly words: Told;
  readonly formula: Told;
  readonly inputs: ReadInputs<T>;
  readonly sources?: readonly SourceId[];
}

/** Makes the working of a number of one part of the plan, found by what stood between the brackets of its path. */
export function explain<T>(
  find: (context: FinsetContext, ids: readonly string[]) => T | null | undefined,
  { words, formula, inputs, sources = ["geometry"] }: Explained<T>,
): Working<FinsetContext> {
  return {
    words,
    formula,
    sources,
    inputs: (context, ids) => {
      const part = find(context, ids);
      return part === null || part === undefined ? [] : inputs(part, context, ids);
    },
  };
}

/** The element of a list of the plan whose id is the one asked for. */
export function byId<T extends { readonly id: string }>(
  list: readonly T[] | undefined,
  id: string | undefined,
): T | undefined {
  return list?.find((element) => element.id === id);
}

export const findMark = ({ plan }: FinsetContext, ids: readonly string[]): FinMark | undefined =>
  byId(plan.finset?.marks, ids[0]);

/** The fin as the board file states it. */
export const findStated = ({ board }: FinsetContext, name: string): FinInput | undefined =>
  board.fins?.set.find(({ fin }) => fin === name);

const NONE = "not there";
export const lengthIn = (name: Told, valueM: number | null | undefined): WorkingInput =>
  read(name, valueM, (m) => length(m, "fine"));
export const massIn = (name: string, valueKg: number | null | undefined): WorkingInput =>
  read(name, valueKg, (kg) => ({ ...mass(kg), grain: "coarse" }));
export const angleIn = (name: Told, valueRad: number | null | undefined): WorkingInput =>
  read(name, valueRad, (rad) => angle(rad, "fine"));
export const textIn = (name: string, value: string | null | undefined): WorkingInput => ({
  name,
  value: value ?? NONE,
});

function read(name: Told, value: number | null | undefined, make: (value: number) => Quantity): WorkingInput {
  return { name, value: value === null || value === undefined ? NONE : make(value) };
}
