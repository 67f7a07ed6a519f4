import { findNearest, type Phrase, say } from "@lapline/engine";
import { z } from "zod/mini";
import { missingOr, quotedNames } from "../reading/choicePhrase";
import { issueText } from "../reading/issueSays";
import { isTimeZone } from "../zone/zoneOffset";
import { isWallTime } from "./isWallTime";

const LONGEST_TEXT = 200;
/** Line ends, terminal steering and marks that turn the writing direction have no place in a name. */
const PLAIN_TEXT = /^[^\p{Cc}\p{Zl}\p{Zp}\p{Bidi_Control}]*$/u;
/** `constructor` is a name that every object answers to, so it can name no record. */
const ID = /^(?!constructor$)[a-z0-9][a-z0-9._-]{0,63}$/;
const ENTRY_ID = /^[A-Za-z0-9][A-Za-z0-9._-]{0,63}$/;
const TIME_OF_DAY = /^([01]\d|2[0-3]):[0-5]\d$/;

/** A line of free text, such as a name. */
export function plainText(what: Phrase): z.ZodMiniType<string> {
  return z
    .string({ error: missing(say`write ${what} as text in quotes`) })
    .check(
      z.minLength(1, { error: issueText(say`write ${what}, or leave the field out`) }),
      z.maxLength(LONGEST_TEXT, { error: issueText(say`${what} has at most ${LONGEST_TEXT} characters`) }),
      z.regex(PLAIN_TEXT, { error: issueText(say`${what} is one line of plain text`) }),
    );
}

/** The id of a material, fin, step or coat: small letters, digits, points and hyphens. */
export function id(what: Phrase, example: string): z.ZodMiniType<string> {
  const need = say`write ${what}, small letters, digits and hyphens, such as "${example}"`;
  return z.string({ error: missing(need) }).check(z.regex(ID, { error: issueText(need) }));
}

/** The id of an entry in the record. */
export function entryId(): z.ZodMiniType<string> {
  const need = say`write the id of an entry, letters, digits and hyphens, such as "r1"`;
  return z.string({ error: missing(need) }).check(z.regex(ENTRY_ID, { error: issueText(need) }));
}

/** One of a few fixed words. */
export function oneOf<const Words extends readonly string[]>(words: Words): z.ZodMiniType<Words[number]> {
  return z.enum(words, { error: ({ input }) => issueText(describeOneOf(input, words)) });
}

/** What would be right where one of a few fixed words belongs. */
export function describeOneOf(input: unknown, words: readonly string[]): Phrase {
  const listed = quotedNames(words);
  const need = words.length === 1 ? say`write ${listed}` : say`write one of ${listed}`;
  if (input === undefined) return missingOr(need, input);
  const near = typeof input === "string" ? findNearest(input, words) : null;
  return near === null ? need : say`was "${near}" meant? ${need}`;
}

/** A number without a unit. */
export function plainNumber(what: Phrase, least: number, most: number): z.ZodMiniType<number> {
  const need = say`${what} is a number without a unit, ${least} to ${most}`;
  return z
    .number({ error: missing(need) })
    .check(z.minimum(least, { error: issueText(need) }), z.maximum(most, { error: issueText(need) }));
}

export function wholeNumber(what: Phrase, least: number, most: number): z.ZodMiniType<number> {
  const need = say`${what} is a whole number, ${least} to ${most}`;
  return z
    .int({ error: missing(need) })
    .check(z.minimum(least, { error: issueText(need) }), z.maximum(most, { error: issueText(need) }));
}

export function yesOrNo(): z.ZodMiniType<boolean> {
  return z.boolean({ error: missing(say`write true or false, without quotes`) });
}

/** Local wall time of a day that exists. */
export function wallTime(): z.ZodMiniType<string> {
  const need = say`write a day and a time, such as "2026-04-11T09:00"`;
  return z
    .string({ error: missing(need) })
    .check(
      z.regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d)?$/, { error: issueText(need) }),
      z.refine(isWallTime, { error: issueText(say`there is no such day or time`) }),
    );
}

/** The pattern keeps names such as "CEST" out, which say nothing of when clocks change. */
export function timeZone(): z.ZodMiniType<string> {
  const need = say`write a time zone by its IANA name, such as "Europe/Dublin"`;
  return z
    .string({ error: missing(need) })
    .check(
      z.regex(/^(?:UTC|[A-Z][A-Za-z_-]+(?:\/[A-Za-z0-9_+-]+)+)$/, { error: issueText(need) }),
      z.refine(isTimeZone, { error: issueText(say`no zone of that name is known; ${need}`) }),
    );
}

export function timeOfDay(): z.ZodMiniType<string> {
  const need = say`write a time of day, such as "09:00"`;
  return z.string({ error: missing(need) }).check(z.regex(TIME_OF_DAY, { error: issueText(need) }));
}

/** A list, `[ … ]`, of so many at most. */
export function listOf<Item extends z.ZodMiniType>(
  item: Item,
  what: Phrase,
  most: number,
): z.ZodMiniArray<Item> {
  return z.array(item, { error: missing(say`${what} stand in a list, [ … ]`) }).check(
    z.maxLength(most, {
      error: ({ input }) => issueText(say`${sizeOf(input)} are too many: ${what} are at most ${most}`),
    }),
  );
}

function missing(need: Phrase): (issue: { readonly input?: unknown }) => string {
  return ({ input }) => issueText(missingOr(need, input));
}

const sizeOf = (input: unknown): number => (Array.isArray(input) ? input.length : 0);
