import type { Plan } from "@lapline/engine";
import {
  asSentence,
  repairDays,
  repairSentences,
  repairsDrawing,
  repairTitle,
  tell,
  tellPhrase,
  waterState,
} from "@lapline/present";
import { useCallback } from "react";
import { PartSection } from "../board/PartSection";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { useSettings } from "../settings/Settings";
import { Fractions } from "../shared/Fractions";

/** What is still open, each with the step that closes it, and the repairs drawn where they are. */
export function SealPart({ plan }: { readonly plan: Plan }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const { water } = plan;
  const repairs = plan.repairs ?? [];
  return (
    <PartSection id="seal" findings={plan.findings}>
      <p className="says">{waterState(plan, reader)}</p>
      {water.open.length > 0 && (
        <>
          <h3>{t`Still open`}</h3>
          <ul className="open">
            {water.open.map(({ says, text, step, bars }) => (
              <li key={text} className={bars ? "bars" : undefined}>
                <Fractions text={asSentence(tellPhrase(says, reader))} />{" "}
                {step !== null && <a href={`#step-${step}`}>{t`To the step`}</a>}
              </li>
            ))}
          </ul>
        </>
      )}
      {repairs.length > 0 && <Repairs plan={plan} repairs={repairs} />}
    </PartSection>
  );
}

function Repairs({ plan, repairs }: { readonly plan: Plan; readonly repairs: NonNullable<Plan["repairs"]> }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const draw = useCallback((widthMm: number) => repairsDrawing(plan, { reader, widthMm }), [plan, reader]);
  return (
    <>
      <h3>{t`Repairs`}</h3>
      {repairs.some(({ done }) => !done) && (
        <SheetDrawing
          title={t`${plan.name}, repairs`}
          desc={t`Where the repairs are on the board, and each spot with its patches; the figures stand below in words.`}
          draw={draw}
        />
      )}
      {repairs.map((repair) => (
        <section key={repair.id} className={repair.done ? "repair done" : "repair"}>
          <h4>
            <Fractions text={repairTitle(repair, reader)} />
          </h4>
          <ul>
            {[...repairSentences(repair, reader), ...repairDays(plan, repair, reader)].map((sentence) => (
              <li key={sentence}>
                <Fractions text={sentence} />
              </li>
            ))}
          </ul>
        </section>
      ))}
    </>
  );
}
