import {
  describeKey,
  formatLength,
  formatPhrase,
  formatQuantity,
  type Plan,
  type Quantity,
} from "@lapline/engine";
import type { Reader } from "../../src/language/Reader";

/** What stands at a path of the plan, walked without the program's own reader of paths. */
export function valueAt(plan: Plan, path: string): unknown {
  let value: unknown = plan;
  for (const part of partsOf(path)) {
    if (Array.isArray(value)) {
      const list: readonly unknown[] = value;
      value = list.find((each) => namesOf(each).includes(part)) ?? list[Number(part)];
    } else value = Object(value)[part];
  }
  return value;
}

const namesOf = (element: unknown): readonly unknown[] => {
  const { id, path, step } = Object(element);
  return [id, path, step];
};

/** Brackets may hold a path with brackets of its own. */
function partsOf(path: string): readonly string[] {
  return [...path.matchAll(/\[((?:[^[\]]|\[[^[\]]*\])*)\]|([^.[\]]+)/g)].map(
    ([, inside, key]) => inside ?? key ?? "",
  );
}

const GRAINS = ["coarse", "normal", "fine"] as const;

/** Every way in which a number of the plan may stand on paper: each grain, the tape's finest step, with unit and without. */
export function formatsOf(key: string, value: number, { units, language }: Reader): readonly string[] {
  const described = describeKey(key, value);
  if (typeof described === "string") return [described];
  if (!("dimension" in described)) return [formatPhrase(described, "mm")];
  const texts = [
    ...GRAINS.map((grain) => formatQuantity({ ...described, grain }, units)),
    ...(described.dimension === "length" ? tapeTexts(described, units) : []),
    // Differences of a millimetre stay in millimetres for a reader of inches.
    ...GRAINS.map((grain) => formatQuantity({ ...described, grain }, "mm")),
  ];
  return texts
    .flatMap((text) => [text, text.replace(/ (in|mm)$/, "")])
    .map((text) => (language === "de" ? text.replace(/(\d)\.(?=\d)/g, "$1,") : text));
}

function tapeTexts({ value }: Quantity, units: Reader["units"]): readonly string[] {
  if (units === "inch") return [formatLength(value, { units, denominator: 32 })];
  const half = Math.round(value * 2000) / 2000;
  return ([8, 32] as const).map((denominator) => formatLength(half, { units, denominator }));
}

/** All numbers of a part of the plan, each with the key that says its unit. */
export function leavesOf(value: unknown, key = ""): ReadonlyArray<readonly [key: string, value: number]> {
  if (typeof value === "number") return [[key, value]];
  if (Array.isArray(value)) return value.flatMap((each) => leavesOf(each, key));
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([name, each]) => leavesOf(each, name));
}
