import { duration, type Plan } from "@lapline/engine";
import {
  asSentence,
  haveReady,
  repairSentences,
  stepTitle,
  stepWaits,
  tell,
  tellPhrase,
  tellText,
  waterRules,
} from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { Figures } from "../shared/Figures";
import { Fractions } from "../shared/Fractions";
import { PageLink } from "../shared/PageLink";
import type { BenchStep } from "./listCards";
import { StepWindow } from "./StepWindow";
import { shortTitle } from "./shortTitle";

interface StartCardProps {
  readonly plan: Plan;
  readonly step: BenchStep;
  readonly nowMs: number;
  readonly bench: string;
}

/** A step before hands are on it: what can hurt and what to do, what stands before it, when, why, and what to have ready. */
export function StartCard({ plan, step, nowMs, bench }: StartCardProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  const { more } = shortTitle(step, reader);
  const ready = [...step.materials, ...step.tools];
  const waits = stepWaits(plan.steps ?? [], step, reader);
  const repair = plan.repairs?.find(({ id }) => step.id.startsWith(`${id}-`));
  return (
    <>
      {more !== "" && <p>{more}</p>}
      {step.cautions.length > 0 && (
        <ul className="full-cautions">
          {step.cautions.map((caution) => (
            <li key={caution}>{tellText(caution, reader)}</li>
          ))}
        </ul>
      )}
      <NotYet plan={plan} step={step} bench={bench} />
      <StepWindow plan={plan} step={step} nowMs={nowMs} />
      {(step.handsOnS > 0 || waits.length > 0) && (
        <Figures
          entries={[
            ...(step.handsOnS > 0
              ? [{ name: t`hands on`, of: duration(step.handsOnS), why: `steps[${step.id}].handsOnS` }]
              : []),
            ...waits
              .slice(0, 2)
              .map(({ words, waitS, path }) => ({ name: words, of: duration(waitS), why: path })),
          ]}
        />
      )}
      {repair !== undefined && <Sentences sentences={repairSentences(repair, reader)} />}
      {step.id === "water" && (
        <Sentences
          sentences={[
            ...plan.water.open.map(({ says }) => asSentence(tellPhrase(says, reader))),
            ...waterRules(reader),
          ]}
        />
      )}
      {ready.length > 0 && <p>{haveReady(ready, reader)}.</p>}
      <p>
        <b>{t`Why:`}</b> {tellText(step.because, reader)}.
      </p>
    </>
  );
}

/** What should be done before and is not; the builder may go on all the same, and the plan then takes it as it happened. */
function NotYet({ plan, step, bench }: Omit<StartCardProps, "nowMs">) {
  const { reader } = useSettings();
  const t = tell(reader);
  if (step.done) return null;
  const missing = step.needs.flatMap(({ step: id, because }) => {
    const needed = plan.steps?.find((each) => each.id === id);
    return needed === undefined || needed.done ? [] : [{ needed, because }];
  });
  if (missing.length === 0) return null;
  return (
    <section className="not-yet">
      <h2>{t`Before it, and not done yet`}</h2>
      <ul>
        {missing.map(({ needed, because }) => (
          <li key={needed.id}>
            <PageLink to={`${bench}/${needed.id}`}>{stepTitle(needed.title, reader)}</PageLink>
            <p>{asSentence(tellText(because, reader))}</p>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Sentences({ sentences }: { sentences: readonly string[] }) {
  return (
    <ul className="told">
      {sentences.map((sentence) => (
        <li key={sentence}>
          <Fractions text={sentence} />
        </li>
      ))}
    </ul>
  );
}
