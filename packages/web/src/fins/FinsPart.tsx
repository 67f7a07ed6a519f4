import type { BoardFile, Problem } from "@lapline/contract";
import type { Board, Finding, Plan } from "@lapline/engine";
import { PartSection } from "../board/PartSection";
import type { FieldPath } from "../board/withField";
import { useTell } from "../settings/useTell";
import { Fold } from "../shared/Fold";
import { AddFin } from "./AddFin";
import { AsSetView } from "./AsSetView";
import { CheckViews } from "./CheckViews";
import { FinFields } from "./FinFields";
import type { FinsForm } from "./FinsForm";
import { isWithin, numberFindings } from "./findingsAt";
import { GateView } from "./GateView";
import { HouseSets } from "./HouseSets";
import { MarkingOut } from "./MarkingOut";
import { PlugView } from "./PlugView";
import { PocketTable } from "./PocketTable";
import { RoomTable } from "./RoomTable";
import { SetFields } from "./SetFields";
import { SidesSwitch } from "./SidesSwitch";

interface FinsPartProps {
  readonly file: BoardFile;
  readonly board: Board;
  readonly plan: Plan;
  readonly problems: readonly Problem[];
  edit(path: FieldPath, value: unknown): void;
}

/** Fins from the numbers to the cut: the rule for the sides, the marks, the set, the gate before the router, the plug. */
export function FinsPart({ file, board, plan, problems, edit }: FinsPartProps) {
  const t = useTell();
  const { fins } = file;
  return (
    <PartSection id="fins" findings={plan.findings} placed={isPlaced}>
      {fins === undefined ? (
        <>
          <p className="says">{t`No fins yet. Begin with a set, then change its numbers.`}</p>
          <HouseSets board={board} fins={undefined} edit={edit} />
        </>
      ) : (
        <FinsOfBoard form={{ file, fins, board, plan, problems, edit }} />
      )}
    </PartSection>
  );
}

function FinsOfBoard({ form }: { form: FinsForm }) {
  const t = useTell();
  const { plan, fins, board, edit } = form;
  const { finset } = plan;
  const numbered = numberFindings(plan, board.fins?.set ?? []);
  return (
    <>
      <SidesSwitch form={form} />
      {finset !== null && <MarkingOut plan={plan} finset={finset} numbered={numbered} />}
      <h3>{t`The set`}</h3>
      <SetFields form={form} />
      <div className="fin-list">
        {fins.set.map((fin, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a fin is known by its place in the file, as its path is
          <FinFields key={i} form={form} index={i} fin={fin} numbered={numbered} />
        ))}
      </div>
      <AddFin form={form} />
      <HouseSets board={board} fins={fins} edit={edit} />
      {finset !== null && (
        <>
          <Fold title={t`Room`}>
            <RoomTable finset={finset} />
          </Fold>
          <CheckViews plan={plan} finset={finset} />
          <GateView form={form} finset={finset} />
          <AsSetView plan={plan} finset={finset} />
          <PocketTable plan={plan} finset={finset} />
        </>
      )}
      <PlugView form={form} />
    </>
  );
}

const PLACES = [
  "fins.set",
  "fins.sides",
  "fins.asSet",
  "fins.verify",
  "fins.leashPlug",
  "fins.tolerance",
  "finset.verify",
];

/** What stands at its own place within the part. */
function isPlaced({ path }: Finding): boolean {
  return path !== "fins.set" && PLACES.some((place) => isWithin(path, place));
}
