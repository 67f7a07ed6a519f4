import type { Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { type CalendarLine, calendarDays } from "../words/calendarDays";
import { waitsExplained } from "../words/waterWords";
import type { Block } from "./Block";
import { sayWhyMissing } from "./sayWhyMissing";
import { wrapText } from "./wrapText";

/** The days to the first surf, each with its hours at the bench. */
export function calendarBlock(plan: Plan, reader: Reader): Block {
  const t = tell(reader);
  const title = t`CALENDAR`;
  if (plan.calendar === null) {
    const reasons = sayWhyMissing(plan, "calendar", reader);
    return { title, lines: reasons.flatMap((reason) => wrapText(reason, { indent: 2 })) };
  }
  return {
    title,
    lines: [
      ...wrapText(waitsExplained(reader), { indent: 2 }),
      ...calendarDays(plan, reader).flatMap(({ day, lines }) => [`  ${day}`, ...lines.flatMap(lineOf)]),
    ],
  };
}

function lineOf({ clock, words, more, done }: CalendarLine): readonly string[] {
  const text = [words, ...more].join("; ");
  return wrapText(`${done ? "[x]" : "[ ]"} ${clock.padEnd(CLOCK_WIDTH)}${text}`, { indent: 2, hanging: 22 });
}

/** `09:00 bis 09:45` and a space. */
const CLOCK_WIDTH = 16;
