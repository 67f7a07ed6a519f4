import { angle, length, type Plan } from "@lapline/engine";
import { finDrawing, finName, tellText } from "@lapline/present";
import { useCallback, useMemo } from "react";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Amount } from "../shared/Amount";
import { FactTable } from "../shared/FactTable";
import { TapeAmount } from "../shared/TapeAmount";
import type { FinMark, Finset } from "./FinsForm";
import { flagsOf, type NumberedFinding } from "./findingsAt";

interface MarkingOutProps {
  readonly plan: Plan;
  readonly finset: Finset;
  readonly numbered: readonly NumberedFinding[];
}

/** The tail at large scale with what is needed to mark it, and the same in figures. */
export function MarkingOut({ plan, finset, numbered }: MarkingOutProps) {
  const t = useTell();
  const { reader } = useSettings();
  const flags = useMemo(() => flagsOf(numbered), [numbered]);
  const draw = useCallback(
    (widthMm: number) => finDrawing(plan, { reader, widthMm, flags, mayShorten: true }),
    [plan, reader, flags],
  );
  return (
    <>
      <h3>{t`Marking-out`}</h3>
      <div className="fins">
        <SheetDrawing
          title={t`${plan.name}, marking-out`}
          desc={t`The tail bottom up, nose away, with the fin marks; their distances stand in the table.`}
          draw={draw}
          zooms
          caption={
            numbered.length > 0 ? t`Numbers on tape: what was found at that fin, below at its numbers.` : ""
          }
        />
        <div className="fins-figures">
          {finset.line.crotchFromTailM === null ? (
            <MarksTable marks={finset.marks} />
          ) : (
            <SwallowMarks marks={finset.marks} />
          )}
          <StandTable marks={finset.marks} />
        </div>
      </div>
    </>
  );
}

const ENDS = ["trailing", "leading"] as const;

function MarksTable({ marks }: { marks: readonly FinMark[] }) {
  const { reader } = useSettings();
  const t = useTell();
  return (
    <table className="marks">
      <caption>{t`Mark`}</caption>
      <thead>
        <tr>
          <th scope="col">{t`fin, end`}</th>
          <th scope="col">{t`from tail`}</th>
          <th scope="col">{t`from line`}</th>
          <th scope="col">{t`from rail`}</th>
        </tr>
      </thead>
      {marks.map((mark) => (
        <tbody key={mark.id}>
          {ENDS.map((end) => (
            <tr key={end} className={end}>
              <th scope="row">
                {finName(mark.id, reader)}
                <span className="quiet">, {tellText(end, reader)}</span>
              </th>
              <td>
                <TapeAmount
                  ofM={mark[end].fromTailTapeM}
                  why={`finset.marks[${mark.id}].${end}.fromTailTapeM`}
                />
              </td>
              <td>
                <TapeAmount
                  ofM={mark[end].fromCentrelineM}
                  why={`finset.marks[${mark.id}].${end}.fromCentrelineM`}
                />
              </td>
              <td>
                <TapeAmount ofM={mark[end].fromRailM} why={`finset.marks[${mark.id}].${end}.fromRailM`} />
              </td>
            </tr>
          ))}
        </tbody>
      ))}
    </table>
  );
}

/** A swallow tail's marks, from the tips and from the crotch: a column more than a phone's table holds. */
function SwallowMarks({ marks }: { marks: readonly FinMark[] }) {
  const { reader } = useSettings();
  const t = useTell();
  return (
    <FactTable
      caption={t`Mark`}
      isToMark
      heads={[t`fin, end`, t`from tips`, t`from crotch`, t`from line`, t`from rail`]}
      rows={marks.flatMap((mark) =>
        ENDS.map((end) => ({
          id: `${mark.id}-${end}`,
          name: `${finName(mark.id, reader)}, ${tellText(end, reader)}`,
          cells: [
            <TapeAmount
              key="tips"
              ofM={mark[end].fromTailTapeM}
              why={`finset.marks[${mark.id}].${end}.fromTailTapeM`}
            />,
            <TapeAmount
              key="crotch"
              ofM={mark[end].fromCrotchTapeM}
              why={`finset.marks[${mark.id}].${end}.fromCrotchTapeM`}
            />,
            <TapeAmount
              key="line"
              ofM={mark[end].fromCentrelineM}
              why={`finset.marks[${mark.id}].${end}.fromCentrelineM`}
            />,
            <TapeAmount
              key="rail"
              ofM={mark[end].fromRailM}
              why={`finset.marks[${mark.id}].${end}.fromRailM`}
            />,
          ],
        })),
      )}
    />
  );
}

function StandTable({ marks }: { marks: readonly FinMark[] }) {
  const { reader } = useSettings();
  const t = useTell();
  return (
    <FactTable
      caption={t`Stand`}
      heads={[t`fin`, t`base`, t`string beside nose`, t`toe over base`, t`toe`, t`cant`, t`true cant`]}
      rows={marks.map((mark) => ({
        id: mark.id,
        name: finName(mark.id, reader),
        cells: [
          <TapeAmount key="base" ofM={mark.baseM} why={`finset.marks[${mark.id}].baseM`} />,
          <TapeAmount
            key="string"
            ofM={mark.side === "centre" ? null : mark.aimBesideNoseM}
            why={`finset.marks[${mark.id}].aimBesideNoseM`}
          />,
          <Amount
            key="over"
            of={mark.side === "centre" ? null : length(mark.toeOverBaseM, "fine")}
            why={`finset.marks[${mark.id}].toeOverBaseM`}
          />,
          <Amount key="toe" of={angle(mark.toeRad)} why={`finset.marks[${mark.id}].toeRad`} />,
          <Amount key="cant" of={angle(mark.cantRad)} why={`finset.marks[${mark.id}].cantRad`} />,
          <Amount key="true" of={angle(mark.trueCantRad)} why={`finset.marks[${mark.id}].trueCantRad`} />,
        ],
      }))}
    />
  );
}
