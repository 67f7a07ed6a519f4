import { length, type Plan, volume } from "@lapline/engine";
import { stepTitle } from "@lapline/present";
import { memo, useEffect, useRef } from "react";
import type { BoardEntry } from "../api/boardClient";
import { shortTitle } from "../bench/shortTitle";
import type { PlanRead } from "../plan/GoodBoard";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Fractions } from "../shared/Fractions";
import { PageLink } from "../shared/PageLink";
import { problemLines } from "../shared/problemLines";
import { BoardDrawing } from "./BoardDrawing";
import { boardStateAt, boardStateWords } from "./boardState";

interface StandingBoardProps {
  readonly entry: BoardEntry;
  /** Undefined while it is not worked out, null where it could not be fetched. */
  readonly read: PlanRead | null | undefined;
  readonly mmPerM: number;
  readonly stands: "stands" | "lies";
  readonly nowMs: number;
  cameIntoView(id: string): void;
}

/** One board against the wall or in the rack, with its name, its state in a word and what comes next. */
export const StandingBoard = memo(function StandingBoard(props: StandingBoardProps) {
  const { entry, read, mmPerM, stands, nowMs, cameIntoView } = props;
  const ref = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const observer = new IntersectionObserver((seen) => {
      if (seen.some(({ isIntersecting }) => isIntersecting)) cameIntoView(entry.id);
    });
    if (ref.current !== null) observer.observe(ref.current);
    return () => observer.disconnect();
  }, [entry.id, cameIntoView]);
  const plan = read?.ok === true ? read.plan : null;
  return (
    <div ref={ref} className="rack">
      <PageLink to={`/board/${entry.id}`} className="standing">
        <span className="standing-wall">
          {plan !== null && <BoardDrawing plan={plan} mmPerM={mmPerM} stands={stands} />}
        </span>
        <span className="standing-name">{plan?.name ?? entry.name}</span>
      </PageLink>
      <div className="standing-words">
        {plan !== null && <PlanWords id={entry.id} plan={plan} rider={entry.rider} nowMs={nowMs} />}
        {(read === null || read?.ok === false || !entry.readable) && <WhyNot read={read} />}
      </div>
    </div>
  );
});

interface PlanWordsProps {
  readonly id: string;
  readonly plan: Plan;
  readonly rider: string | null;
  readonly nowMs: number;
}

function PlanWords({ id, plan, rider, nowMs }: PlanWordsProps) {
  const t = useTell();
  const { reader } = useSettings();
  const state = boardStateAt(plan, nowMs);
  const isOpen = state.kind !== "measure" && state.kind !== "stopped" && state.next !== null;
  return (
    <>
      {(plan.shape !== null || rider !== null) && (
        <p className="standing-size">
          {plan.shape !== null && (
            <Fractions text={t`${length(plan.shape.lengthTapeM)}, ${volume(plan.shape.volumeM3)}`} />
          )}
          {plan.shape !== null && rider !== null && " · "}
          {rider}
        </p>
      )}
      <p className={`standing-state standing-${state.kind}`}>{boardStateWords(state, reader)}</p>
      {plan.water.barred && <p className="standing-barred">{t`not for water`}</p>}
      {isOpen && state.next !== null && (
        <PageLink to={`/board/${id}/bench/${state.next.id}`} className="standing-bench">
          <span className="unseen">{stepTitle(state.next.title, reader)}</span>
          <span aria-hidden="true">{t`next: ${shortTitle(state.next, reader).name}`}</span>
        </PageLink>
      )}
    </>
  );
}

/** Why a board has no plan. */
function WhyNot({ read }: { read: PlanRead | null | undefined }) {
  const t = useTell();
  const { reader } = useSettings();
  const first = read?.ok === false ? read.problems[0] : undefined;
  return (
    <>
      <p className="standing-stopped">{read === null ? t`cannot be fetched just now` : t`cannot be read`}</p>
      {first !== undefined && <p className="standing-size">{problemLines([first], reader)}</p>}
    </>
  );
}
