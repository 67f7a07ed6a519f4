import type { Finding } from "@lapline/engine";
import { useEffect } from "react";
import { BenchLink } from "../bench/BenchLink";
import { CutPart } from "../cut/CutPart";
import { FinsPart } from "../fins/FinsPart";
import { MixPart } from "../mix/MixPart";
import { PapersPart } from "../papers/PapersPart";
import { SandPart } from "../sand/SandPart";
import { SealPart } from "../seal/SealPart";
import { Heard } from "../session/Heard";
import type { BoardSession, OpenBoard } from "../session/SessionView";
import { UndoButtons } from "../session/UndoButtons";
import { VersionsPart } from "../session/VersionsPart";
import { SettingsBar } from "../settings/SettingsBar";
import { useTell } from "../settings/useTell";
import { PageLink } from "../shared/PageLink";
import { ShopForm } from "../shop/ShopForm";
import { WaterPart } from "../water/WaterPart";
import { WhyProvider } from "../why/WhyProvider";
import { AssumedPart } from "./AssumedPart";
import { BarredLine } from "./BarredLine";
import { BuildLine } from "./BuildLine";
import { FindingTape } from "./FindingTape";
import { GlassPart } from "./GlassPart";
import { MeasurePart } from "./MeasurePart";
import { SavingWords } from "./SavingWords";

interface BoardSheetProps {
  readonly id: string;
  readonly session: BoardSession;
  readonly board: OpenBoard;
}

/** One board from the tape to the water: what is typed on the left of a number changes everything after it at once. */
export function BoardSheet({ id, session, board }: BoardSheetProps) {
  const t = useTell();
  const { draft, saving } = board;
  const { edit } = session;
  const { plan } = draft.good;
  const blockers = plan.findings.filter(
    (finding) => finding.severity === "blocker" && !isFromNoShape(finding),
  );
  useEffect(() => {
    document.title = `${plan.name} · Lapline`;
  }, [plan.name]);
  return (
    <>
      <header className="top">
        <PageLink to="/" className="home">
          <span aria-hidden="true">‹&nbsp;</span>
          {t`The Shed`}
        </PageLink>
        <UndoButtons session={session} board={board} />
        <SettingsBar />
      </header>
      <div className="board">
        <BuildLine plan={plan} />
        <main>
          <h1>{draft.file.name}</h1>
          <SavingWords state={saving} file={draft.file} />
          <BenchLink id={id} plan={plan} />
          <Heard session={session} board={board} />
          <BarredLine plan={plan} />
          {blockers.length > 0 && <Blockers blockers={blockers} />}
          <WhyProvider board={draft.good.board} plan={plan}>
            <MeasurePart draft={draft} edit={edit} />
            <FinsPart
              file={draft.file}
              board={draft.good.board}
              plan={plan}
              problems={draft.problems}
              edit={edit}
            />
            <GlassPart draft={draft} edit={edit} />
            <CutPart plan={plan} />
            <MixPart plan={plan}>
              <ShopForm file={draft.file} problems={draft.problems} findings={plan.findings} edit={edit} />
            </MixPart>
            <SandPart file={draft.file} plan={plan} survey={draft.good.board.survey} edit={edit} />
            <SealPart plan={plan} />
            <WaterPart file={draft.file} plan={plan} edit={edit} />
            <PapersPart
              id={id}
              file={draft.file}
              board={draft.good.board}
              plan={plan}
              isSaved={saving.kind === "saved" && !saving.isAway}
            />
            <AssumedPart plan={plan} />
          </WhyProvider>
          <VersionsPart id={id} session={session} board={board} />
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
