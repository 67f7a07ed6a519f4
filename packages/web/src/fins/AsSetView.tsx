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
          <Distance key="trailing" ofM={fin.trailingErrorM} />,
          <Distance key="leading" ofM={fin.leadingErrorM} />,
          <Turn key="toe" ofRad={fin.toeErrorRad} />,
          <Turn key="cant" ofRad={fin.cantErrorRad} />,
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
          <Distance key="trailing" ofM={pair.trailingDifferM} />,
          <Distance key="leading" ofM={pair.leadingDifferM} />,
          <Distance key="along" ofM={pair.alongDifferM} />,
          <Turn key="toe" ofRad={pair.toeDifferRad} />,
          pair.withinTolerance ? t`good` : t`out`,
        ],
      }))}
    />
  );
}

const Distance = ({ ofM }: { ofM: number | null }) => (
  <Amount of={ofM === null ? null : length(ofM, "fine")} />
);

const Turn = ({ ofRad }: { ofRad: number | null }) => (
  <Amount of={ofRad === null ? null : angle(ofRad, "fine")} />
);
