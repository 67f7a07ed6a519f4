import type { FinsForm } from "../fins/FinsForm";
import { GateGroup } from "../fins/GateGroup";
import { GateLoose } from "../fins/GateLoose";
import { GateSurface } from "../fins/GateSurface";
import { GateVerdict } from "../fins/GateVerdict";
import { useTell } from "../settings/useTell";
import type { BenchHand } from "./BenchHand";

/** Checks of one kind before the router, each under the thumb, with the verdict in sight. */
export function GateCard({ hand, checks }: { hand: BenchHand; checks: readonly string[] }) {
  const t = useTell();
  const { file, problems, good } = hand.draft;
  const { finset } = good.plan;
  if (file.fins === undefined || finset === null) return null;
  const form: FinsForm = {
    file,
    fins: file.fins,
    board: good.board,
    plan: good.plan,
    problems,
    edit: hand.edit,
  };
  const isFirst = finset.verify.checks[0]?.id === checks[0];
  return (
    <div className="gate">
      <p className="as-it-lies">{t`Bottom up, nose away: LEFT is on your right hand.`}</p>
      {isFirst && (
        <>
          <GateLoose form={form} finset={finset} />
          <GateSurface form={form} verify={finset.verify} />
        </>
      )}
      <ol className="gate-list">
        <GateGroup
          form={form}
          finset={finset}
          heading="h2"
          checks={finset.verify.checks.filter(({ id }) => checks.includes(id))}
        />
      </ol>
      <GateVerdict form={form} verify={finset.verify} />
    </div>
  );
}
