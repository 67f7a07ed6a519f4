import { CAUTIONS, type Plan } from "@lapline/engine";
import { cautionName } from "../../../words/cautionName";
import { type CautionsHere, stepCautions } from "../../../words/stepCautions";
import { stepTitle } from "../../../words/stepTitle";
import { wallTimeWords } from "../../../words/wallTimeWords";
import { notePiece } from "../pieces/notePiece";
import { stepHeads, stepPiece } from "../pieces/stepPiece";
import { tapeHeading } from "../pieces/tapeHeading";
import type { SheetContext, SheetPart } from "../SheetContext";
import { foundPieces } from "./foundPieces";
import { missingPieces } from "./missingPieces";
import { waitTexts } from "./waitTexts";
import { windowTexts } from "./windowTexts";

type Steps = NonNullable<Plan["steps"]>;

/** The steps in order, each with a box to tick, when or how long, what to wait for, and the harm it can do. */
export function stepsPart(context: SheetContext): SheetPart {
  const { plan, t } = context;
  const heading = tapeHeading(t`Steps`, context);
  const { steps } = plan;
  if (steps === null) return { startsPage: false, pieces: [heading, ...missingPieces(context, "steps")] };
  // Said once for all of them, above.
  const own = steps.map((step) => ({ ...step, cautions: step.cautions.filter(isOwn) }));
  // In English, since the Sheet has names of its own for them, found by the English text.
  const cautions = stepCautions(own, { ...context.reader, language: "en" });
  const defers = steps.find((step) => !step.cautions.every(isOwn));
  return {
    startsPage: true,
    pieces: [
      heading,
      ...[...(defers === undefined ? [] : [CAUTIONS.sheet.text]), ...cautions.always].map((caution) =>
        notePiece(t`At every step: ${ownWords(steps, caution, context)}`, context, "!"),
      ),
      ...foundPieces(context, ["steps", "calendar", "sanding", "water"]),
      stepHeads(context),
      ...steps.map((step, i) =>
        stepPiece(
          {
            number: `${i + 1}`,
            title: context.ledger.told(`steps[${step.id}].title`, stepTitle(step.title, context.reader)),
            handsOn: step.handsOnS > 0 ? context.ledger.show(`steps[${step.id}].handsOnS`) : "",
            starts: step.done ? "" : startText(step.id, context),
            times: step.done ? [] : (windowTexts(step.id, context) ?? waitTexts(step.id, context)),
            cautions: cautionTexts(steps, cautions.steps[i] ?? { full: [], again: [] }, context),
            done: step.done,
          },
          context,
        ),
      ),
    ],
  };
}

const isOwn = (caution: string): boolean => caution !== CAUTIONS.sheet.text;

/** When it starts, where days are planned. */
function startText(id: string, { plan, ledger, reader }: SheetContext): string {
  const startsAt = plan.calendar?.find(({ step }) => step === id)?.startsAt ?? null;
  if (startsAt === null) return "";
  const { shortDay, clock } = wallTimeWords(startsAt, reader);
  return ledger.told(`calendar[${id}].startsAt`, `${shortDay}, ${clock}`);
}

function cautionTexts(steps: Steps, { full, again }: CautionsHere, context: SheetContext): readonly string[] {
  const { t } = context;
  const bySteps = new Map<number, string[]>();
  for (const { harm, step } of again) bySteps.set(step, [...(bySteps.get(step) ?? []), harm]);
  const repeated = [...bySteps].map(([step, harms]) => {
    const number = context.ledger.told(`steps[${steps[step - 1]?.id}]`, `${step}`);
    return t`As at step ${number}: ${harms.map((harm) => cautionName(harm, t) ?? harm).join(" · ")}.`;
  });
  return [
    ...full.map((caution) => ownWords(steps, caution, context)),
    ...(repeated.length > 0 ? [repeated.join(" ")] : []),
  ];
}

/** A caution of the plan, kept with where it stands. */
function ownWords(steps: Steps, caution: string, { ledger }: SheetContext): string {
  const step = steps.find(({ cautions }) => cautions.includes(caution));
  return ledger.words(`steps[${step?.id}].cautions[${step?.cautions.indexOf(caution)}]`);
}
