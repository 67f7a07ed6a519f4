import { duration, formatQuantity, type Plan, type Units } from "@lapline/engine";
import { type CautionsHere, stepCautions } from "../words/stepCautions";
import type { Block } from "./Block";
import { sayWhyMissing } from "./sayWhyMissing";
import { wrapText } from "./wrapText";

type Step = NonNullable<Plan["steps"]>[number];

/** The steps in order, each with a box to tick, how long it takes, and the harm it can do with what to do against it. */
export function stepsBlock(plan: Plan, units: Units): Block {
  const { steps } = plan;
  if (steps === null) {
    return {
      title: "STEPS",
      lines: sayWhyMissing(plan, "steps", units).flatMap((reason) => wrapText(reason, { indent: 2 })),
    };
  }
  const cautions = stepCautions(steps);
  return {
    title: "STEPS",
    lines: [
      ...cautions.always.flatMap((caution) =>
        wrapText(`! At every step: ${caution}`, { indent: 2, hanging: 4 }),
      ),
      ...steps.flatMap((step, i) => [
        ...headLines(step, i + 1, units),
        ...cautionLines(cautions.steps[i] ?? { full: [], again: [] }),
      ]),
    ],
  };
}

function headLines(step: Step, number: number, units: Units): readonly string[] {
  const times = [
    ...(step.handsOnS > 0 ? [`hands on ${formatQuantity(duration(step.handsOnS), units)}`] : []),
    ...(step.waitS !== null && step.waitS > 0
      ? [`then wait ${formatQuantity(duration(step.waitS), units)}`]
      : []),
  ];
  const time = times.length > 0 ? ` (${times.join(", ")})` : "";
  return wrapText(`[${step.done ? "x" : " "}] ${number}. ${step.title}${time}`, { indent: 2, hanging: 9 });
}

function cautionLines({ full, again }: CautionsHere): readonly string[] {
  return [
    ...full.map((caution) => `! ${caution}`),
    ...again.map(({ harm, step }) => `! ${harm}: as at step ${step}.`),
  ].flatMap((line) => wrapText(line, { indent: 7, hanging: 9 }));
}
