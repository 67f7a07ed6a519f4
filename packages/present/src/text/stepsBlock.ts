import { duration, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { cautionName } from "../words/cautionName";
import { haveReady } from "../words/haveReady";
import { type CautionsHere, stepCautions } from "../words/stepCautions";
import { stepTitle } from "../words/stepTitle";
import { type StepWait, stepWaits } from "../words/stepWaits";
import type { Block } from "./Block";
import { sayWhyMissing } from "./sayWhyMissing";
import { wrapText } from "./wrapText";

type Step = NonNullable<Plan["steps"]>[number];

/** The steps in order, each with a box to tick, how long it takes, and the harm it can do with what to do against it. */
export function stepsBlock(plan: Plan, reader: Reader): Block {
  const t = tell(reader);
  const { steps } = plan;
  if (steps === null) {
    return {
      title: t`STEPS`,
      lines: sayWhyMissing(plan, "steps", reader).flatMap((reason) => wrapText(reason, { indent: 2 })),
    };
  }
  const cautions = stepCautions(steps, reader);
  return {
    title: t`STEPS`,
    lines: [
      ...cautions.always.flatMap((caution) =>
        wrapText(`! ${t`At every step: ${caution}`}`, { indent: 2, hanging: 4 }),
      ),
      ...steps.flatMap((step, i) => [
        ...headLines(step, { number: i + 1, waits: stepWaits(steps, step, reader), reader }),
        ...materialLines(step, reader),
        ...cautionLines(cautions.steps[i] ?? { full: [], again: [] }, reader),
      ]),
    ],
  };
}

interface StepHead {
  readonly number: number;
  readonly waits: readonly StepWait[];
  readonly reader: Reader;
}

function headLines(step: Step, { number, waits, reader }: StepHead): readonly string[] {
  const t = tell(reader);
  const show = (timeS: number): string => showQuantity(duration(timeS), reader);
  const times = [
    ...(step.handsOnS > 0 ? [t`hands on ${show(step.handsOnS)}`] : []),
    ...waits.map(({ words, waitS }) => `${words} ${show(waitS)}`),
  ];
  const time = times.length > 0 ? ` (${times.join(", ")})` : "";
  return wrapText(`[${step.done ? "x" : " "}] ${number}. ${stepTitle(step.title, reader)}${time}`, {
    indent: 2,
    hanging: 9,
  });
}

function materialLines({ materials, done }: Step, reader: Reader): readonly string[] {
  if (done || materials.length === 0) return [];
  return wrapText(haveReady(materials, reader), { indent: 7, hanging: 9 });
}

function cautionLines({ full, again }: CautionsHere, reader: Reader): readonly string[] {
  const t = tell(reader);
  const bySteps = new Map<number, string[]>();
  for (const { harm, step, caution } of again)
    bySteps.set(step, [...(bySteps.get(step) ?? []), cautionName(caution, t) ?? harm]);
  const repeated = [...bySteps].map(([step, names]) => t`As at step ${step}: ${names.join(", ")}.`);
  return [...full, ...repeated]
    .map((line) => `! ${line}`)
    .flatMap((line) => wrapText(line, { indent: 7, hanging: 9 }));
}
