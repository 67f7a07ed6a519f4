import { duration, type Plan } from "@lapline/engine";
import { asSentence, type CautionsHere, stepCautions } from "@lapline/present";
import { Amount } from "../shared/Amount";
import { PartSection } from "./PartSection";

/** What is still open, and the way there step by step. */
export function WaterPart({ plan }: { plan: Plan }) {
  const { water, steps } = plan;
  return (
    <>
      <PartSection id="seal" findings={plan.findings}>
        {!water.ready && (
          <>
            <p className="says">Still open:</p>
            <ul className="open">
              {water.because.map((reason) => (
                <li key={reason}>{reason}</li>
              ))}
            </ul>
          </>
        )}
      </PartSection>
      <PartSection id="water" findings={plan.findings}>
        <p className="says">{water.ready ? "Ready for water." : "Not ready for water."}</p>
        {water.firstSurfAt !== null && <p>First surf: {water.firstSurfAt}</p>}
        {steps !== null && <StepList steps={steps} />}
      </PartSection>
    </>
  );
}

type Steps = NonNullable<Plan["steps"]>;

function StepList({ steps }: { steps: Steps }) {
  const cautions = stepCautions(steps);
  return (
    <>
      <h3>Steps</h3>
      {cautions.always.length > 0 && (
        <ul className="cautions">
          {cautions.always.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      )}
      <ol className="steps">
        {steps.map((step, i) => (
          <StepEntry key={step.id} step={step} cautions={cautions.steps[i]} />
        ))}
      </ol>
    </>
  );
}

function StepEntry({ step, cautions }: { step: Steps[number]; cautions: CautionsHere | undefined }) {
  return (
    <li className={step.done ? "done" : undefined}>
      <p className="step-title">{step.title}</p>
      <p className="quiet">
        {step.done && "Done. "}
        {step.handsOnS > 0 && (
          <>
            <Amount of={duration(step.handsOnS)} /> hands on.{" "}
          </>
        )}
        {step.waitS !== null && step.waitS > 0 && (
          <>
            Then wait <Amount of={duration(step.waitS)} />.{" "}
          </>
        )}
        {asSentence(step.because)}
      </p>
      {cautions !== undefined && <Cautions {...cautions} />}
    </li>
  );
}

function Cautions({ full, again }: CautionsHere) {
  if (full.length + again.length === 0) return null;
  return (
    <ul className="cautions">
      {full.map((caution) => (
        <li key={caution}>{caution}</li>
      ))}
      {again.map(({ harm, step }) => (
        <li key={harm}>
          {harm}: as at step {step}.
        </li>
      ))}
    </ul>
  );
}
