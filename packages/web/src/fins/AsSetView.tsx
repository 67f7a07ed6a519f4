import { angle, length, type Plan } from "@lapline/engine";
import { asSetDrawing, correctionWords, finName } from "@lapline/present";
import { useCallback } from "react";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { ENGLISH } from "../settings/english";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import { FactTable } from "../shared/FactTable";
import { Fractions } from "../shared/Fractions";
import type { Finset } from "./FinsForm";

/** The fins as measured: their errors drawn large, in figures, against the tolerance, and the smallest correction. */
export function AsSetView({ plan, finset }: { plan: Plan; finset: Finset }) {
  const { reader } = useSettings();
  const draw = useCallback((widthMm: number) => asSetDrawing(plan, { reader, widthMm }), [plan, reader]);
  if (finset.asSet.length === 0) return null;
  return (
    <>
      <h3 id="as-set">As set</h3>
      <div className="fins">
        <SheetDrawing
          title={`${plan.name}, fins as set`}
          desc="The fins as measured over the fins as planned; their errors stand in the table."
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
  const { reader } = useSettings();
  return (
    <FactTable
      caption="Errors, and the smallest correction"
      heads={["fin", "trailing", "leading", "toe", "cant", "verdict"]}
      rows={finset.asSet.map((fin) => ({
        id: fin.id,
        name: (
          <>
            {finName(fin.id, ENGLISH)} {fin.on !== null && <span className="quiet">{fin.on}</span>}
          </>
        ),
        state: fin.withinTolerance ? "good" : "out",
        cells: [
          <Distance key="trailing" ofM={fin.trailingErrorM} />,
          <Distance key="leading" ofM={fin.leadingErrorM} />,
          <Turn key="toe" ofRad={fin.toeErrorRad} />,
          <Turn key="cant" ofRad={fin.cantErrorRad} />,
          fin.withinTolerance ? (
            "good"
          ) : (
            <Fractions key="verdict" text={`move: ${correctionWords(fin.correction, reader)}`} />
          ),
        ],
      }))}
    />
  );
}

function PairTable({ finset }: { finset: Finset }) {
  if (finset.asSetPairs.length === 0) return null;
  return (
    <FactTable
      caption="Left less right"
      heads={["pair", "trailing", "leading", "along", "toe", "verdict"]}
      rows={finset.asSetPairs.map((pair) => ({
        id: pair.id,
        name: finName(pair.id, ENGLISH),
        state: pair.withinTolerance ? "good" : "out",
        cells: [
          <Distance key="trailing" ofM={pair.trailingDifferM} />,
          <Distance key="leading" ofM={pair.leadingDifferM} />,
          <Distance key="along" ofM={pair.alongDifferM} />,
          <Turn key="toe" ofRad={pair.toeDifferRad} />,
          pair.withinTolerance ? "good" : "out",
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
