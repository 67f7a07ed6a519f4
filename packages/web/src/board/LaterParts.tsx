import { memo, useEffect } from "react";
import { CutPart } from "../cut/CutPart";
import { FinsPart } from "../fins/FinsPart";
import { MixPart } from "../mix/MixPart";
import { PapersPart } from "../papers/PapersPart";
import { SandPart } from "../sand/SandPart";
import { SealPart } from "../seal/SealPart";
import type { BoardSession, OpenBoard } from "../session/SessionView";
import { VersionsPart } from "../session/VersionsPart";
import { ShopForm } from "../shop/ShopForm";
import { WaterPart } from "../water/WaterPart";
import { AssumedPart } from "./AssumedPart";
import { GlassPart } from "./GlassPart";

interface LaterPartsProps {
  readonly id: string;
  readonly session: BoardSession;
  readonly board: OpenBoard;
  /** They stand on the page now. */
  here(): void;
}

/** The parts after Measure: below the first screen, so that their script is fetched when the plan is already seen. */
function LaterParts({ id, session, board, here }: LaterPartsProps) {
  const { draft, saving } = board;
  const { edit } = session;
  const { plan } = draft.good;
  useEffect(() => {
    here();
    // The address named a place that was not there yet.
    const place = window.location.hash.slice(1);
    if (place !== "") document.getElementById(place)?.scrollIntoView();
  }, [here]);
  return (
    <>
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
      <VersionsPart id={id} session={session} board={board} />
    </>
  );
}

export default memo(LaterParts);
