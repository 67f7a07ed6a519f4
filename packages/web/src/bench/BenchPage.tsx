import { NotOpened } from "../board/NotOpened";
import { PadProvider } from "../pad/PadProvider";
import { useBoardSession } from "../session/useBoardSession";
import { BenchSheet } from "./BenchSheet";
// Later ones win over earlier ones.
import "./bench.css";
import "./benchCards.css";
import "./benchFoot.css";

interface BenchPageProps {
  /** The board's. */
  readonly id: string;
  /** The step to work on; the next one where none is named. */
  readonly stepId: string | undefined;
}

/** The Bench of one board: for gloves, one step at a time. */
export default function BenchPage({ id, stepId }: BenchPageProps) {
  const { session, view } = useBoardSession(id);
  if (view.kind === "opening") return <main className="page" aria-busy="true" />;
  if (view.kind === "failed") return <NotOpened why={view.why} isUnpaired={view.isUnpaired} />;
  const { draft, saving } = view;
  return (
    <PadProvider isAlwaysOn>
      <BenchSheet
        hand={{ id, draft, edit: session.edit, addEntry: session.addEntry }}
        saving={saving}
        stepId={stepId}
      />
    </PadProvider>
  );
}
