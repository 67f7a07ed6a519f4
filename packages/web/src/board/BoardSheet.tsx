import type { Finding } from "@lapline/engine";
import { lazy, Suspense, useCallback, useState } from "react";
import { BenchLink } from "../bench/BenchLink";
import { Heard } from "../session/Heard";
import type { BoardSession, OpenBoard } from "../session/SessionView";
import { UndoButtons } from "../session/UndoButtons";
import { useTell } from "../settings/useTell";
import { InTurn } from "../shared/InTurn";
import { PageTop } from "../shared/PageTop";
import { usePageTitle } from "../shared/usePageTitle";
import { WhyProvider } from "../why/WhyProvider";
import { BarredLine } from "./BarredLine";
import { LineInTurn } from "./BuildLine";
import { FindingTape } from "./FindingTape";
import { MeasurePart } from "./MeasurePart";
import { SavingWords } from "./SavingWords";

const LaterParts = lazy(() => import("./LaterParts"));

interface BoardSheetProps {
  readonly id: string;
  readonly session: BoardSession;
  readonly board: OpenBoard;
}

/** One board from the tape to the water: what is typed on the left of a number changes everything after it at once. */
export function BoardSheet({ id, session, board }: BoardSheetProps) {
  const { draft, saving } = board;
  const { edit } = session;
  const { plan } = draft.good;
  const [isWhole, setWhole] = useState(false);
  const whole = useCallback(() => setWhole(true), []);
  const blockers = plan.findings.filter(
    (finding) => finding.severity === "blocker" && !isFromNoShape(finding),
  );
  usePageTitle(plan.name);
  return (
    <>
      <PageTop>
        <UndoButtons session={session} board={board} />
      </PageTop>
      <div className="board">
        <LineInTurn plan={plan} isWhole={isWhole} />
        <main>
          <h1>{draft.file.name}</h1>
          <SavingWords state={saving} file={draft.file} />
          <InTurn of={plan}>{(shown) => <BenchLink id={id} plan={shown} />}</InTurn>
          <Heard session={session} board={board} />
          <InTurn of={plan}>{(shown) => <BarredLine plan={shown} />}</InTurn>
          {blockers.length > 0 && <Blockers blockers={blockers} />}
          <WhyProvider board={draft.good.board} plan={plan}>
            <MeasurePart draft={draft} edit={edit} />
            <Suspense fallback={<div className="later-parts" aria-busy="true" />}>
              <LaterParts id={id} session={session} board={board} here={whole} />
            </Suspense>
          </WhyProvider>
        </main>
      </div>
    </>
  );
}

/** That there is nothing measured yet, and what only follows from it, stands in its part: the page leads through the readings. */
const isFromNoShape = ({ code }: Finding): boolean =>
  code.endsWith(".no-shape") || code === "survey.too-few-stations" || code === "survey.no-thickness";

/** What stops the build, across the edge of the page. */
function Blockers({ blockers }: { blockers: readonly Finding[] }) {
  const t = useTell();
  return (
    <section className="blockers" aria-label={t`What stops the build`}>
      {blockers.map((finding, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two findings may share code and place
        <FindingTape key={`${finding.code} ${i}`} finding={finding} />
      ))}
    </section>
  );
}
