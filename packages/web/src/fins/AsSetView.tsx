import { angle, length, type Plan } from "@lapline/engine";
import { asSetDrawing, correctionWords, finName, tellText } from "@lapline/present";
import { useCallback } from "react";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Amount } from "../shared/Amount";
import { FactTable } from "../shared/FactTable";
import { Fractions } from "../shared/Fractions";
import type { Finset } from "./FinsForm";

/** The fins as measured: their errors drawn large, in figures, against the tolerance, and the smallest correction. */
export function AsSetView({ plan, finset }: { plan: Plan; finset: Finset }) {
  const t = useTell();
  const { reader } = useSettings();
  const draw = useCallback((widthMm: number) => asSetDrawing(plan, { reader, widthMm }), [plan, reader]);
  if (finset.asSet.length === 0) return null;
  return (
    <>
      <h3 id="as-set">{t`As set`}</h3>
      <div className="fins">
        <SheetDrawing
          title={t`${plan.name}, fins as set`}
          desc={t`The fins as measured over the fins as planned; their errors stand in the table.`}
          draw={draw}
          zooms
        />
        <div className="fins-figures">
          <AsSetTable finset={finset} />
          <PairTable finset={finset} />
        </div>
      </div>
    </>
  );
}

function AsSetTable({ finset }: { finset: Finset }) {
  const t = useTell();
  const { reader } = useSettings();
  return (
    <FactTable
      caption={t`Errors, and the smallest correction`}
      heads={[t`fin`, t`trailing`, t`leading`, t`toe`, t`cant`, t`verdict`]}
      rows={finset.asSet.map((fin) => ({
        id: fin.id,
        name: (
          <>
            {finName(fin.id, reader)}{" "}
            {fin.on !== null && <span className="quiet">{tellText(fin.on, reader)}</span>}
          </>
        ),
        state: fin.withinTolerance ? "good" : "out",
        cells: [
          <Distance key="trailing" ofM={fin.trailingErrorM} why={`finset.asSet[${fin.id}].trailingErrorM`} />,
          <Distance key="leading" ofM={fin.leadingErrorM} why={`finset.asSet[${fin.id}].leadingErrorM`} />,
          <Turn key="toe" ofRad={fin.toeErrorRad} why={`finset.asSet[${fin.id}].toeErrorRad`} />,
          <Turn key="cant" ofRad={fin.cantErrorRad} why={`finset.asSet[${fin.id}].cantErrorRad`} />,
          fin.withinTolerance ? (
            t`good`
          ) : (
            <Fractions key="verdict" text={t`move: ${correctionWords(fin.correction, reader)}`} />
          ),
        ],
      }))}
    />
  );
}

function PairTable({ finset }: { finset: Finset }) {
  const { reader } = useSettings();
  const t = useTell();
  if (finset.asSetPairs.length === 0) return null;
  return (
    <FactTable
      caption={t`Left less right`}
      heads={[t`pair`, t`trailing`, t`leading`, t`along`, t`toe`, t`verdict`]}
      rows={finset.asSetPairs.map((pair) => ({
        id: pair.id,
        name: finName(pair.id, reader),
        state: pair.withinTolerance ? "good" : "out",
        cells: [
          <Distance
            key="trailing"
            ofM={pair.trailingDifferM}
            why={`finset.asSetPairs[${pair.id}].trailingDifferM`}
          />,
          <Distance
            key="leading"
            ofM={pair.leadingDifferM}
            why={`finset.asSetPairs[${pair.id}].leadingDifferM`}
          />,
          <Distance key="along" ofM={pair.alongDifferM} why={`finset.asSetPairs[${pair.id}].alongDifferM`} />,
          <Turn key="toe" ofRad={pair.toeDifferRad} why={`finset.asSetPairs[${pair.id}].toeDifferRad`} />,
          pair.withinTolerance ? t`good` : t`out`,
        ],
      }))}
    />
  );
}

const Distance = ({ ofM, why }: { ofM: number | null; why: string }) => (
  <Amount of={ofM === null ? null : length(ofM, "fine")} why={why} />
);

const Turn = ({ ofRad, why }: { ofRad: number | null; why: string }) => (
  <Amount of={ofRad === null ? null : angle(ofRad, "fine")} why={why} />
);
