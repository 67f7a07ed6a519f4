import { duration, type Plan } from "@lapline/engine";
import { tellText } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { PageLink } from "../shared/PageLink";
import { atWords, momentWord } from "./clockWords";
import { runningClocks } from "./listClock";

interface ClockStripProps {
  readonly plan: Plan;
  readonly nowMs: number;
  /** The address of the Bench. */
  readonly bench: string;
  readonly isArmed: boolean;
}

/** Every wet clock that runs, each with what comes next and in how long; a touch leads to the whole of it. */
export function ClockStrip({ plan, nowMs, bench, isArmed }: ClockStripProps) {
  const t = useTell();
  const { reader } = useSettings();
  const running = runningClocks(plan, nowMs);
  if (running.length === 0) return null;
  return (
    <section className="clocks" aria-label={t`Wet clocks`}>
      {running.map(({ coat, moments }) => {
        const next = moments.find(({ atMs }) => atMs > nowMs);
        const step = plan.steps?.find((each) => each.coat === coat)?.id;
        if (next === undefined || step === undefined) return null;
        return (
          <PageLink key={coat} to={`${bench}/${step}#clock`} className="clock">
            <span>{tellText(coat, reader)}</span>
            <b>{momentWord(next.kind, reader)}</b>
            <span>{atWords(next.atMs, nowMs, reader)}</span>
            <b>{t`in ${duration((next.atMs - nowMs) / 1000)}`}</b>
          </PageLink>
        );
      })}
      {!isArmed && <p>{t`Touch anywhere once, and it will sound.`}</p>}
    </section>
  );
}
