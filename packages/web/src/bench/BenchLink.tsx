import type { Plan } from "@lapline/engine";
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
  const { steps } = plan;
  if (steps === null || steps.length === 0) return null;
  const next = steps.find(({ done }) => !done);
  return (
    <PageLink to={`/board/${encodeURIComponent(id)}/bench`} className="to-bench">
      {next === undefined ? t`to the Bench` : t`to the Bench: ${shortTitle(next, reader).name}`}
    </PageLink>
  );
}
