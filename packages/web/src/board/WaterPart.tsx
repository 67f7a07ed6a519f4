import { duration, type Plan } from "@lapline/engine";
import {
  asSentence,
  type CautionsHere,
  haveReady,
  type StepWait,
  stepCautions,
  stepTitle,
  stepWaits,
  tell,
  tellText,
  waterRules,
} from "@lapline/present";
import { Fragment } from "react";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Amount } from "../shared/Amount";
import { PartSection } from "./PartSection";

/** What is still open, and the way there step by step. */
export function WaterPart({ plan }: { plan: Plan }) {
  const t = useTell();
  const { reader } = useSettings();
  const { water, steps } = plan;
  return (
    <>
      <PartSection id="seal" findings={plan.findings}>
        {!water.ready && (
          <>
            <p className="says">{t`Still open:`}</p>
            <ul className="open">
              {water.because.map((reason) => (
                <li key={reason}>{tellText(reason, reader)}</li>
              ))}
            </ul>
          </>
        )}
      </PartSection>
      <PartSection id="water" findings={plan.findings}>
        <p className="says">{water.ready ? t`Ready for water.` : t`Not ready for water.`}</p>
        {water.firstSurfAt !== null && <p>{t`First surf: ${water.firstSurfAt}`}</p>}
        {waterRules(reader).map((rule) => (
          <p key={rule}>{rule}</p>
        ))}
        {steps !== null && <StepList steps={steps} />}
      </PartSection>
    </>
  );
}

type Steps = NonNullable<Plan["steps"]>;

function StepList({ steps }: { steps: Steps }) {
  const { reader } = useSettings();
  const t = useTell();
  const cautions = stepCautions(steps, reader);
  return (
    <>
      <h3>{t`Steps`}</h3>
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
            waits={stepWaits(steps, step, reader)}
            cautions={cautions.steps[i]}
          />
        ))}
      </ol>
    </>
  );
}

interface StepEntryProps {
  readonly step: Steps[number];
  readonly waits: readonly StepWait[];
  readonly cautions: CautionsHere | undefined;
}

function StepEntry({ step, waits, cautions }: StepEntryProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  return (
    <li className={step.done ? "done" : undefined}>
      <p className="step-title">{stepTitle(step.title, reader)}</p>
      <p className="quiet">
        {step.done && `${t`Done.`} `}
        {step.handsOnS > 0 && <>{t`${duration(step.handsOnS)} hands on.`} </>}
        <Waits waits={waits} />
        {asSentence(tellText(step.because, reader))}
      </p>
      {!step.done && step.materials.length > 0 && (
        <p className="quiet">{haveReady(step.materials, reader)}.</p>
      )}
      {cautions !== undefined && <Cautions {...cautions} />}
    </li>
  );
}

/** "Flip after 2 h 21 min, sand after 22 h 34 min." */
function Waits({ waits }: { waits: readonly StepWait[] }) {
  if (waits.length === 0) return null;
  return (
    <>
      {waits.map(({ words, waitS }, i) => (
        <Fragment key={words}>
          {i === 0 ? asSentence(words).slice(0, -1) : `, ${words}`} <Amount of={duration(waitS)} />
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
