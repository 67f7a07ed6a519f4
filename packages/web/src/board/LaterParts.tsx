import { useEffect } from "react";
import { CutPart } from "../cut/CutPart";
import { FinsPart } from "../fins/FinsPart";
import { MixPart } from "../mix/MixPart";
import { SandPart } from "../sand/SandPart";
import { SealPart } from "../seal/SealPart";
import type { BoardSession, OpenBoard } from "../session/SessionView";
import { VersionsPart } from "../session/VersionsPart";
import { ShopForm } from "../shop/ShopForm";
import { WaterPart } from "../water/WaterPart";
import { AssumedPart } from "./AssumedPart";
import { GlassPart } from "./GlassPart";
import { PapersInTurn } from "./PapersInTurn";
import { PartInTurn } from "./PartInTurn";

interface LaterPartsProps {
  readonly id: string;
  readonly session: BoardSession;
  readonly board: OpenBoard;
  /** They stand on the page now. */
  here(): void;
}

/** The parts after Measure: below the first screen, so that their script is fetched when the plan is already seen. */
export default function LaterParts({ id, session, board, here }: LaterPartsProps) {
  const { draft, saving } = board;
  const { edit } = session;
  useEffect(() => {
    here();
    // The address named a place that was not there yet.
    const place = window.location.hash.slice(1);
    if (place !== "") document.getElementById(place)?.scrollIntoView();
  }, [here]);
  return (
    <>
      <PartInTurn id="fins" draft={draft}>
        {({ file, problems, good: { board, plan } }) => (
          <FinsPart {...{ file, board, plan, problems, edit }} />
        )}
      </PartInTurn>
      <PartInTurn id="glass" draft={draft}>
        {(shown) => <GlassPart draft={shown} edit={edit} />}
      </PartInTurn>
      <PartInTurn id="cut" draft={draft}>
        {({ good }) => <CutPart plan={good.plan} />}
      </PartInTurn>
      <PartInTurn id="mix" draft={draft}>
        {({ file, problems, good: { plan } }) => (
          <MixPart plan={plan}>
            <ShopForm file={file} problems={problems} findings={plan.findings} edit={edit} />
          </MixPart>
        )}
      </PartInTurn>
      <PartInTurn id="sand" draft={draft}>
        {({ file, good: { board, plan } }) => <SandPart {...{ file, plan, survey: board.survey, edit }} />}
      </PartInTurn>
      <PartInTurn id="seal" draft={draft}>
        {({ good }) => <SealPart plan={good.plan} />}
      </PartInTurn>
      <PartInTurn id="water" draft={draft}>
        {({ file, good: { plan } }) => <WaterPart {...{ file, plan, edit }} />}
      </PartInTurn>
      <PapersInTurn id={id} draft={draft} isSaved={saving.kind === "saved" && !saving.isAway} />
      <PartInTurn id="assumed" draft={draft}>
        {({ good }) => <AssumedPart plan={good.plan} />}
      </PartInTurn>
      <VersionsPart id={id} session={session} board={board} />
    </>
  );
}
