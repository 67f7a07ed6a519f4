import { DIMENSION_WORDS, type Dimension, type Phrase, parseQuantity, say } from "@lapline/engine";
import { z } from "zod/mini";
import type { QuantityText } from "../file/QuantityText";
import { missingOr } from "../reading/choicePhrase";
import { issueText } from "../reading/issueSays";

/** Both ends belong to the range; written with a unit, as messages show them. */
export interface Limits {
  readonly least: string;
  readonly most: string;
}

/** What every quantity begins with: a sign, then a digit, a point or a fraction of one character. */
const QUANTITY_PATTERN = "^\\s*[-+−]?\\s*[0-9.,½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒]";

/** A quantity with its unit, refused outside its limits, beyond which a slip of unit or sign is likelier than a board. */
export function quantity(dimension: Dimension, limits: Limits): z.ZodMiniType<QuantityText> {
  const range = { leastSi: inSi(limits.least, dimension), mostSi: inSi(limits.most, dimension), ...limits };
  const { name, example } = DIMENSION_WORDS[dimension];
  return z
    .string({ error: ({ input }) => issueText(describeNotText(input, dimension)) })
    .check(({ value, issues }) => {
      const parsed = parseQuantity(value, dimension);
      const says = parsed.ok ? describeOutside(parsed.value, dimension, range) : parsed.says;
      if (says !== null) issues.push({ code: "custom", message: issueText(says), input: value });
    })
    .register(z.globalRegistry, {
      description: `${name} with its unit, ${limits.least} to ${limits.most}`,
      examples: [example],
      pattern: QUANTITY_PATTERN,
    });
}

function inSi(text: string, dimension: Dimension): number {
  const parsed = parseQuantity(text, dimension);
  if (!parsed.ok) throw new RangeError(parsed.message);
  return parsed.value;
}

/** A number, nothing, or something else where text with a unit belongs. */
function describeNotText(input: unknown, dimension: Dimension): Phrase {
  const { name, example } = DIMENSION_WORDS[dimension];
  if (input === undefined) return missingOr(say`write ${name} with its unit, such as "${example}"`, input);
  if (input === null) return say`leave the field out where nothing was read`;
  const parsed = typeof input === "number" ? parseQuantity(String(input), dimension) : null;
  if (parsed !== null && !parsed.ok) return say`${parsed.says} Write it in quotes, such as "${example}"`;
  return say`write ${name} with its unit, in quotes, such as "${example}"`;
}

interface Range extends Limits {
  readonly leastSi: number;
  readonly mostSi: number;
}

function describeOutside(value: number, dimension: Dimension, range: Range): Phrase | null {
  if (value >= range.leastSi && value <= range.mostSi) return null;
  const isPercentSlip =
    dimension === "fraction" && value > 0 && value < range.leastSi && value * 100 <= range.mostSi;
  if (isPercentSlip)
    return say`less than ${range.least}, the least taken here: a share is written in per cent, such as "8 %"`;
  if (value < 0 && range.leastSi === 0)
    return say`a negative reading; ${range.least} is the least taken here`;
  if (value < range.leastSi) return say`less than ${range.least}, the least taken here: is the unit right?`;
  return say`more than ${range.most}, the most taken here: is the unit right?`;
}
