import { barredSentence, tellText, waterState } from "@lapline/present";
import { useEffect } from "react";
import { nextStep } from "../board/nextStep";
import { SavingWords } from "../board/SavingWords";
import type { SavingState } from "../session/SessionView";
import { useSettings } from "../settings/Settings";
import { SettingsBar } from "../settings/SettingsBar";
import { useTell } from "../settings/useTell";
import { PageLink } from "../shared/PageLink";
import { usePageTitle } from "../shared/usePageTitle";
import { moveTo, replaceWith } from "../shared/usePath";
import { WhyProvider } from "../why/WhyProvider";
import { AlarmWords } from "./AlarmWords";
import type { BenchHand } from "./BenchHand";
import { BenchScreen } from "./BenchScreen";
import { ClockStrip } from "./ClockStrip";
import { chooseStep } from "./chooseStep";
import { isGeneral } from "./isGeneral";
import { StepPicker } from "./StepPicker";
import { useAlarms } from "./useAlarms";
import { useArmed } from "./useArmed";
import { useNow } from "./useNow";
import { useWakeLock } from "./useWakeLock";

interface BenchSheetProps {
  readonly hand: BenchHand;
  readonly saving: SavingState;
  readonly stepId: string | undefined;
}

/** What stands round every screen of the Bench: the way back, which step, what bars the water, what rings, and the clocks. */
export function BenchSheet({ hand, saving, stepId }: BenchSheetProps) {
  const t = useTell();
  const { reader } = useSettings();
  const { plan } = hand.draft.good;
  const nowMs = useNow();
  const alarms = useAlarms(hand.id, plan, nowMs);
  const isArmed = useArmed();
  const isAwake = useWakeLock();
  const steps = plan.steps ?? [];
  const chosen = chooseStep(steps, stepId ?? nextStep(plan)?.id);
  const home = `/board/${encodeURIComponent(hand.id)}`;
  const id = chosen?.step.id;
  const title = t`${plan.name}, the Bench`;
  usePageTitle(title);
  // The address names the step, so that it stays under the hands when another becomes the next one.
  useEffect(() => {
    if (id !== undefined && id !== stepId) replaceWith(`${home}/bench/${id}${window.location.hash}`);
  }, [home, id, stepId]);
  const foot = (
    <footer className="bench-foot">
      {chosen?.step.cautions.filter(isGeneral).map((caution) => (
        <p key={caution}>{tellText(caution, reader)}</p>
      ))}
      <SavingWords state={saving} file={hand.draft.file} />
      <p>{isAwake ? t`The screen stays on.` : t`This browser lets the screen go dark: set it to stay on.`}</p>
      <SettingsBar />
    </footer>
  );
  return (
    <div className="bench">
      <header className="bench-top">
        <PageLink to={home} className="bench-back">
          <span aria-hidden="true">‹&nbsp;</span>
          {t`board`}
        </PageLink>
        {chosen !== null && (
          <StepPicker steps={steps} chosen={chosen} choose={(step) => moveTo(`${home}/bench/${step}`)} />
        )}
        {!plan.water.ready && (
          <p className="bench-barred">{barredSentence(plan, reader) ?? waterState(plan, reader)}</p>
        )}
      </header>
      <AlarmWords alarms={alarms} nowMs={nowMs} />
      <ClockStrip plan={plan} nowMs={nowMs} bench={`${home}/bench`} isArmed={isArmed} />
      {chosen === null ? (
        <>
          <main>
            <h1>{t`No steps yet`}</h1>
            <p>{t`The plan has no order of work as things are; the board's page says what it lacks.`}</p>
          </main>
          {foot}
        </>
      ) : (
        <WhyProvider board={hand.draft.good.board} plan={plan}>
          <BenchScreen key={chosen.step.id} hand={hand} chosen={chosen} nowMs={nowMs} bench={`${home}/bench`}>
            {foot}
          </BenchScreen>
        </WhyProvider>
      )}
    </div>
  );
}
