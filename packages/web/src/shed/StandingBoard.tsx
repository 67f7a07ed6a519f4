import { length, type Plan, volume } from "@lapline/engine";
import { drawingToSvgNode, silhouetteDrawing, stepTitle, tell } from "@lapline/present";
import { useId, useMemo } from "react";
import type { BoardEntry } from "../api/boardClient";
import type { PlanRead } from "../board/planOf";
import { SvgTree } from "../drawing/SvgTree";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Fractions } from "../shared/Fractions";
import { PageLink } from "../shared/PageLink";

interface StandingBoardProps {
  readonly entry: BoardEntry;
  readonly read: PlanRead | null;
  readonly mmPerM: number;
}

/** One board against the wall, with its name and what comes next. */
export function StandingBoard({ entry, read, mmPerM }: StandingBoardProps) {
  const t = useTell();
  const plan = read?.ok === true ? read.plan : null;
  return (
    <>
      <PageLink to={`/board/${entry.id}`} className="standing">
        <span className="standing-wall">{plan !== null && <Silhouette plan={plan} mmPerM={mmPerM} />}</span>
        <span className="standing-name">{plan?.name ?? entry.name}</span>
        {plan === null ? (
          <span className="standing-stopped">{t`cannot be read`}</span>
        ) : (
          <StandingWords plan={plan} />
        )}
      </PageLink>
      {plan !== null && <NextStep id={entry.id} plan={plan} />}
    </>
  );
}

/** What comes next on the board, and the way to its Bench; nothing while something stops the build. */
function NextStep({ id, plan }: { id: string; plan: Plan }) {
  const t = useTell();
  const { reader } = useSettings();
  const next = plan.steps?.find((step) => !step.done);
  if (next === undefined || plan.findings.some(({ severity }) => severity === "blocker")) return null;
  return (
    <PageLink to={`/board/${id}/bench`} className="standing-bench">
      {t`next: ${stepTitle(next.title, reader)}`}
    </PageLink>
  );
}

function StandingWords({ plan }: { plan: Plan }) {
  const t = useTell();
  const stopped = plan.findings.some((finding) => finding.severity === "blocker");
  return (
    <>
      {plan.shape !== null && (
        <span className="standing-size">
          <Fractions text={t`${length(plan.shape.lengthTapeM)}, ${volume(plan.shape.volumeM3)}`} />
        </span>
      )}
      {plan.water.barred && <span className="standing-next">{t`not for water`}</span>}
      {stopped && <span className="standing-stopped">{t`stopped`}</span>}
    </>
  );
}

function Silhouette({ plan, mmPerM }: { plan: Plan; mmPerM: number }) {
  const { reader } = useSettings();
  const idPrefix = useId();
  const node = useMemo(() => {
    const t = tell(reader);
    const drawing = silhouetteDrawing(plan, mmPerM);
    if (drawing === null) return null;
    return drawingToSvgNode(drawing, { title: plan.name, desc: t`Outline, deck up, nose up.`, idPrefix });
  }, [plan, mmPerM, idPrefix, reader]);
  return node === null ? null : <SvgTree node={node} />;
}
