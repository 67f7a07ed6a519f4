import { duration, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { tellText } from "../language/tellText";
import { stepTitle } from "./stepTitle";

type Step = NonNullable<Plan["steps"]>[number];

/** What a step comes after, how long after, and why: one sentence for each need that is still to do. */
export function needSentences(steps: readonly Step[], step: Step, reader: Reader): readonly string[] {
  const t = tell(reader);
  return step.needs.flatMap(({ step: id, until, because, waitS }) => {
    const needed = steps.find((each) => each.id === id);
    if (needed === undefined) return [];
    const title = stepTitle(needed.title, reader).split(/[,:;]/)[0] ?? id;
    const why = tellText(because, reader);
    if (until === "hands-off") return [t`After "${title}": ${why}.`];
    return waitS === null
      ? [t`After "${title}", once it has come so far: ${why}.`]
      : [t`${duration(waitS)} after "${title}": ${why}.`];
  });
}
