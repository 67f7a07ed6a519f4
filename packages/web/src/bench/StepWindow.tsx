import type { Plan } from "@lapline/engine";
import { tell } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { localMs } from "../shared/localMs";
import { atWords } from "./clockWords";
import type { BenchStep } from "./listCards";

interface StepWindowProps {
  readonly plan: Plan;
  readonly step: BenchStep;
  readonly nowMs: number;
}

/** From when the step may begin and by when it must, by the calendar; nothing of it once it is done. */
export function StepWindow({ plan, step, nowMs }: StepWindowProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  const entry = plan.calendar?.find((each) => each.step === step.id);
  if (entry === undefined || entry.done) return null;
  const [opensMs, closesMs] = [localMs(entry.opensAt), localMs(entry.closesAt)];
  const isEarly = opensMs !== null && opensMs > nowMs;
  return (
    <>
      {isEarly && <p className="window">{t`Not before ${atWords(opensMs, nowMs, reader)}.`}</p>}
      {closesMs !== null && (
        <p className="window">
          {closesMs > nowMs
            ? t`Begin by ${atWords(closesMs, nowMs, reader)}.`
            : t`Its time was over at ${atWords(closesMs, nowMs, reader)}.`}
        </p>
      )}
      {entry.sandFirstS > 0 && (
        <p className="window">{t`The coat below is too old to bond: sand it dull first.`}</p>
      )}
    </>
  );
}
