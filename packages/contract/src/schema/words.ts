import { findNearest } from "@lapline/engine";
import { z } from "zod/mini";
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
export function plainText(what: string): z.ZodMiniType<string> {
  return z
    .string({ error: missingOr(`write ${what} as text in quotes`) })
    .check(
      z.minLength(1, { error: `write ${what}, or leave the field out` }),
      z.maxLength(LONGEST_TEXT, { error: `${what} has at most ${LONGEST_TEXT} characters` }),
      z.regex(PLAIN_TEXT, { error: `${what} is one line of plain text` }),
    );
}

/** The id of a material, fin, step or coat: small letters, digits, points and hyphens. */
export function id(what: string, example: string): z.ZodMiniType<string> {
  const need = `write ${what}, small letters, digits and hyphens, such as "${example}"`;
  return z.string({ error: missingOr(need) }).check(z.regex(ID, { error: need }));
}

/** The id of an entry in the record. */
export function entryId(): z.ZodMiniType<string> {
  const need = 'write the id of an entry, letters, digits and hyphens, such as "r1"';
  return z.string({ error: missingOr(need) }).check(z.regex(ENTRY_ID, { error: need }));
}

/** One of a few fixed words. */
export function oneOf<const Words extends readonly string[]>(words: Words): z.ZodMiniType<Words[number]> {
  return z.enum(words, { error: ({ input }) => describeOneOf(input, words) });
}

/** What would be right where one of a few fixed words belongs. */
export function describeOneOf(input: unknown, words: readonly string[]): string {
  const need =
    words.length === 1
      ? `write "${words[0]}"`
      : `write one of ${words.map((word) => `"${word}"`).join(", ")}`;
  if (input === undefined) return `missing: ${need}`;
  const near = typeof input === "string" ? findNearest(input, words) : null;
  return near === null ? need : `was "${near}" meant? ${need}`;
}

/** A number without a unit. */
export function plainNumber(what: string, least: number, most: number): z.ZodMiniType<number> {
  const need = `${what} is a number without a unit, ${least} to ${most}`;
  return z
    .number({ error: missingOr(need) })
    .check(z.minimum(least, { error: need }), z.maximum(most, { error: need }));
}

export function wholeNumber(what: string, least: number, most: number): z.ZodMiniType<number> {
  const need = `${what} is a whole number, ${least} to ${most}`;
  return z
    .int({ error: missingOr(need) })
    .check(z.minimum(least, { error: need }), z.maximum(most, { error: need }));
}

export function yesOrNo(): z.ZodMiniType<boolean> {
  return z.boolean({ error: missingOr("write true or false, without quotes") });
}

/** Local wall time of a day that exists. */
export function wallTime(): z.ZodMiniType<string> {
  const need = 'write a day and a time, such as "2026-04-11T09:00"';
  return z
    .string({ error: missingOr(need) })
    .check(
      z.regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d)?$/, { error: need }),
      z.refine(isWallTime, { error: "there is no such day or time" }),
    );
}

/** The pattern keeps names such as "CEST" out, which say nothing of when clocks change. */
export function timeZone(): z.ZodMiniType<string> {
  const need = 'write a time zone by its IANA name, such as "Europe/Dublin"';
  return z
    .string({ error: missingOr(need) })
    .check(
      z.regex(/^(?:UTC|[A-Z][A-Za-z_-]+(?:\/[A-Za-z0-9_+-]+)+)$/, { error: need }),
      z.refine(isTimeZone, { error: `no zone of that name is known; ${need}` }),
    );
}

export function timeOfDay(): z.ZodMiniType<string> {
  const need = 'write a time of day, such as "09:00"';
  return z.string({ error: missingOr(need) }).check(z.regex(TIME_OF_DAY, { error: need }));
}

/** A list, `[ … ]`, of so many at most. */
export function listOf<Item extends z.ZodMiniType>(
  item: Item,
  what: string,
  most: number,
): z.ZodMiniArray<Item> {
  return z.array(item, { error: missingOr(`${what} stand in a list, [ … ]`) }).check(
    z.maxLength(most, {
      error: ({ input }) => `${sizeOf(input)} are too many: ${what} are at most ${most}`,
    }),
  );
}

function missingOr(need: string): (issue: { readonly input?: unknown }) => string {
  return ({ input }) => (input === undefined ? `missing: ${need}` : need);
}

const sizeOf = (input: unknown): number => (Array.isArray(input) ? input.length : 0);
