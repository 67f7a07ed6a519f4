import type { BoardFile } from "@lapline/contract";
import type { FieldPath } from "./withField";

type Section = NonNullable<BoardFile["survey"]["section"]>;
export type OneSection = Exclude<Section, readonly unknown[]> & { readonly fromTail?: string };
type Bottom = NonNullable<OneSection["bottom"]>;
export type OneBottom = Exclude<Bottom, readonly unknown[]> & { readonly fromTail?: string };

export interface Placed<T> {
  /** Where it stands in the board file. */
  readonly path: FieldPath;
  readonly value: T;
}

/** The sections of a survey, be they one for the whole board or a list by place. */
export function sectionsOf(section: Section | undefined): ReadonlyArray<Placed<OneSection>> {
  return listed<OneSection>(section, ["survey", "section"]);
}

/** The bottoms of one section, be it one or a list by place. */
export function bottomsOf({ path, value }: Placed<OneSection>): ReadonlyArray<Placed<OneBottom>> {
  return listed<OneBottom>(value.bottom, [...path, "bottom"]);
}

function listed<T>(one: T | readonly T[] | undefined, path: FieldPath): ReadonlyArray<Placed<T>> {
  if (one === undefined) return [];
  if (!isList(one)) return [{ path, value: one }];
  return one.map((value, i) => ({ path: [...path, i], value }));
}

const isList = <T>(one: T | readonly T[]): one is readonly T[] => Array.isArray(one);

/** One more place, like the last; what was one for the whole board then stands at the tail. */
export function withAnother<T extends object>(
  one: T | readonly T[],
): ReadonlyArray<T & { readonly fromTail: string }> {
  const all = (isList(one) ? one : [one]).map((each) => ({ fromTail: "0 in", ...each }));
  const last = all.at(-1);
  return last === undefined ? [] : [...all, { ...last, fromTail: "" }];
}

/** Without one of its places; the last one left holds for the whole board again. */
export function withoutOne<T extends object>(all: readonly T[], index: number): unknown {
  const left = all.filter((_, i) => i !== index);
  const [only] = left;
  if (only === undefined) return undefined;
  if (left.length > 1) return left;
  const { fromTail: _, ...whole } = only as T & { readonly fromTail?: string };
  return whole;
}
