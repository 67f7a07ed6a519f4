import type { Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { tellPhrase } from "../language/tellPhrase";

/** What must be said on every page, sheet and command while foam shows or a box is not sealed in; null once all is closed. */
export function barredSentence({ water }: Pick<Plan, "water">, reader: Reader): string | null {
  if (!water.barred) return null;
  const t = tell(reader);
  const why = water.open.filter(({ bars }) => bars).map(({ says }) => tellPhrase(says, reader));
  return t`Not for water: ${why.join("; ")}.`;
}

/** Whether the board may go into the water, in a sentence. */
export function waterState(plan: Pick<Plan, "water">, reader: Reader): string {
  const t = tell(reader);
  if (plan.water.ready) return t`Ready for water: every step is marked done and nothing is open.`;
  return plan.water.barred ? t`Not for water.` : t`Not ready for water.`;
}

/** How a step's waits and the days' times go together, where both stand. */
export function waitsExplained(reader: Reader): string {
  const t = tell(reader);
  return t`Go by the days: a step's waits are those of a coat that goes on at the hour its cups are dosed for, counted from hands off; the days take each coat from the hour it goes on there, and what is laid late cures through the cooler night and takes longer.`;
}

/** What goes before the first surf beside the steps, and what is looked at after it. */
export function waterRules(reader: Reader): readonly string[] {
  const t = tell(reader);
  return [
    t`Not before the wax is on and the leash, its plug cured and pulled. No dark board lies in the sun; a vent is closed before the water.`,
    t`After the first surf: look for dings, along the edges of the boxes and about the leash plug; what shows foam dries before it is closed.`,
  ];
}
