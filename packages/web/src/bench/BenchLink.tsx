import type { Plan } from "@lapline/engine";
import { nextStep } from "../board/nextStep";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { PageLink } from "../shared/PageLink";
import { shortTitle } from "./shortTitle";

interface BenchLinkProps {
  /** The board's. */
  readonly id: string;
  readonly plan: Plan;
}

/** From a board to its Bench, where the next step lies; nothing while there is no order of work. */
export function BenchLink({ id, plan }: BenchLinkProps) {
  const t = useTell();
  const { reader } = useSettings();
  if (plan.steps === null || plan.steps.length === 0) return null;
  const next = nextStep(plan);
  return (
    <PageLink to={`/board/${encodeURIComponent(id)}/bench`} className="to-bench">
      {next === null ? t`to the Bench` : t`to the Bench: ${shortTitle(next, reader).name}`}
    </PageLink>
  );
}
