import { useState } from "react";
import { FindingTape } from "../board/FindingTape";
import { useTell } from "../settings/useTell";
import { localMs } from "../shared/localMs";
import { wallTime } from "../shared/wallTime";
import type { BenchHand } from "./BenchHand";
import { CheckMark } from "./CheckMark";
import { doneMark } from "./doneMark";
import type { BenchStep } from "./listCards";

const EARLIER_MS = [5 * 60_000, 60 * 60_000] as const;

/** That a step is done and when, what the plan says of that, and how to set it right: by a later entry, never by taking it away. */
export function DoneLine({ hand, step }: { hand: BenchHand; step: BenchStep }) {
  const t = useTell();
  const mark = doneMark(hand.draft.file, step.id);
  const { findings } = hand.draft.good.plan;
  if (mark === undefined) return null;
  return (
    <section className="done-line" aria-label={t`Done`}>
      <p>
        <CheckMark />
        <b>{mark.at === undefined ? t`Done.` : t`Done: ${mark.at.slice(0, 16)}.`}</b>
      </p>
      {findings
        .filter(({ path }) => path === `record[${mark.id}].step`)
        .map((finding) => (
          <FindingTape key={finding.code} finding={finding} />
        ))}
      <Corrections hand={hand} mark={mark} step={step.id} />
    </section>
  );
}

interface CorrectionsProps {
  readonly hand: BenchHand;
  readonly mark: { readonly id: string; readonly at?: string };
  readonly step: string;
}

function Corrections({ hand, mark, step }: CorrectionsProps) {
  const t = useTell();
  const [isOpen, setOpen] = useState(false);
  const [earlierMs, setEarlier] = useState(0);
  const atMs = localMs(mark.at);
  if (!isOpen)
    return <button type="button" className="slight" onClick={() => setOpen(true)}>{t`Set it right`}</button>;
  const close = () => {
    setOpen(false);
    setEarlier(0);
  };
  const at = atMs === null ? null : wallTime(new Date(atMs - earlierMs));
  return (
    <div className="corrections">
      {at !== null &&
        EARLIER_MS.map((stepMs) => (
          <button key={stepMs} type="button" onClick={() => setEarlier(earlierMs + stepMs)}>
            {stepMs === EARLIER_MS[0] ? t`5 min earlier` : t`1 h earlier`}
          </button>
        ))}
      {at !== null && earlierMs > 0 && (
        <button
          type="button"
          onClick={() => {
            hand.addEntry({ kind: "done", step, at, corrects: mark.id });
            close();
          }}
        >
          {t`It was ${at}`}
        </button>
      )}
      <button
        type="button"
        onClick={() => {
          hand.addEntry({ kind: "struck", corrects: mark.id, at: wallTime(new Date()) });
          close();
        }}
      >
        {t`A slip: it is not done`}
      </button>
      <button type="button" onClick={close}>{t`Leave it`}</button>
    </div>
  );
}
