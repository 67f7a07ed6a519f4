import type { BoardFile } from "@lapline/contract";
import { duration, type Plan } from "@lapline/engine";
import {
  asSentence,
  type CautionsHere,
  haveReady,
  needSentences,
  type StepWait,
  stepCautions,
  stepTitle,
  stepWaits,
  tell,
  tellText,
  wallTimeText,
} from "@lapline/present";
import { Fragment } from "react";
import type { FieldPath } from "../board/withField";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Amount } from "../shared/Amount";
import { WhyNumber } from "../why/WhyNumber";
import { StepMark } from "./StepMark";

type Steps = NonNullable<Plan["steps"]>;

interface StepListProps {
  readonly steps: Steps;
  readonly file: BoardFile;
  edit(path: FieldPath, value: unknown): void;
}

/** The whole order of work, each step with what it waits for and why, its time, tools, cautions and mark. */
export function StepList({ steps, file, edit }: StepListProps) {
  const { reader } = useSettings();
  const cautions = stepCautions(steps, reader);
  return (
    <>
      {cautions.always.length > 0 && (
        <ul className="cautions">
          {cautions.always.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      )}
      <ol className="steps">
        {steps.map((step, i) => (
          <StepEntry
            key={step.id}
            step={step}
            needs={needSentences(steps, step, reader)}
            waits={stepWaits(steps, step, reader)}
            cautions={cautions.steps[i]}
            file={file}
            edit={edit}
          />
        ))}
      </ol>
    </>
  );
}

interface StepEntryProps extends Pick<StepListProps, "file" | "edit"> {
  readonly step: Steps[number];
  readonly needs: readonly string[];
  readonly waits: readonly StepWait[];
  readonly cautions: CautionsHere | undefined;
}

function StepEntry({ step, needs, waits, cautions, file, edit }: StepEntryProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  return (
    <li id={`step-${step.id}`} className={step.done ? "done" : undefined}>
      <p className="step-title">{stepTitle(step.title, reader)}</p>
      <p className="quiet">
        {step.done &&
          (step.doneAt === null ? `${t`Done.`} ` : `${t`Done: ${wallTimeText(step.doneAt, reader)}.`} `)}
        {step.handsOnS > 0 && (
          <>
            <WhyNumber
              path={`steps[${step.id}].handsOnS`}
            >{t`${duration(step.handsOnS)} hands on.`}</WhyNumber>{" "}
          </>
        )}
        <Waits waits={waits} />
        {asSentence(tellText(step.because, reader))}
      </p>
      {!step.done && step.materials.length > 0 && (
        <p className="quiet">{haveReady(step.materials, reader)}.</p>
      )}
      {!step.done && needs.length > 0 && (
        <details className="needs">
          <summary>{t`After what, and why`}</summary>
          <ul>
            {needs.map((need) => (
              <li key={need}>{need}</li>
            ))}
          </ul>
          {step.tools.length > 0 && (
            <p className="quiet">{t`In reach: ${step.tools.map((tool) => tellText(tool, reader)).join(", ")}.`}</p>
          )}
        </details>
      )}
      {cautions !== undefined && <Cautions {...cautions} />}
      <StepMark step={step} file={file} edit={edit} />
    </li>
  );
}

/** "Flip after 2 h 21 min, sand after 22 h 34 min." */
function Waits({ waits }: { waits: readonly StepWait[] }) {
  if (waits.length === 0) return null;
  return (
    <>
      {waits.map(({ words, waitS, path }, i) => (
        <Fragment key={words}>
          {i === 0 ? asSentence(words).slice(0, -1) : `, ${words}`} <Amount of={duration(waitS)} why={path} />
        </Fragment>
      ))}
      .{" "}
    </>
  );
}

function Cautions({ full, again }: CautionsHere) {
  const t = useTell();
  if (full.length + again.length === 0) return null;
  return (
    <ul className="cautions">
      {full.map((caution) => (
        <li key={caution}>{caution}</li>
      ))}
      {again.map(({ harm, step }) => (
        <li key={harm}>{t`${harm}: as at step ${step}.`}</li>
      ))}
    </ul>
  );
}
