import type { Plan } from "@lapline/engine";
import { checkDrawing, finName, formatDiagonalWorth, formatDifference } from "@lapline/present";
import { useCallback } from "react";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { AmountText } from "../shared/AmountText";
import { FactTable } from "../shared/FactTable";
import { Fold } from "../shared/Fold";
import { TapeAmount } from "../shared/TapeAmount";
import { WhyNumber } from "../why/WhyNumber";
import type { Finset } from "./FinsForm";

/** What proves each pair before it is cut: strings and diagonals on the whole board, and both figures of each diagonal. */
export function CheckViews({ plan, finset }: { plan: Plan; finset: Finset }) {
  const t = useTell();
  if (finset.pairs.length === 0) return null;
  const tail = finset.line.crotchFromTailM === null ? STARTS.tail : STARTS.crotch;
  return (
    <Fold title={t`String and diagonals`}>
      <p>
        {t`Equal diagonals prove symmetry about the line through the nose tip and the ${tail}, and no more. From the nose they hardly tell a mark that slipped across the board: what a millimetre changes them by stands beside them. Where each side follows its own rail, or the set is laid out about another line, they differ on purpose: hold each side to its own figure.`}
      </p>
      {finset.pairs.map((pair) => (
        <div key={pair.id} className="fins">
          <CheckView plan={plan} fin={pair.id} />
          <DiagonalTable pair={pair} />
        </div>
      ))}
    </Fold>
  );
}

const STARTS = { nose: "nose tip", tail: "tail's middle", crotch: "crotch" } as const;

/** In both systems: it is finer than the marks of an inch tape. */
const Millimetres = ({ text, why }: { text: string; why: string }) => (
  <WhyNumber path={why}>
    <AmountText text={`${text} mm`} />
  </WhyNumber>
);

function CheckView({ plan, fin }: { plan: Plan; fin: string }) {
  const t = useTell();
  const { reader } = useSettings();
  const draw = useCallback(
    (widthMm: number) => checkDrawing(plan, fin, { reader, widthMm }),
    [plan, fin, reader],
  );
  return (
    <SheetDrawing
      title={t`${plan.name}, string and diagonals of the ${finName(fin, reader)} fins`}
      desc={t`The whole board, bottom up; the figures stand in the table beside it.`}
      draw={draw}
      zooms
    />
  );
}

function DiagonalTable({ pair }: { pair: Finset["pairs"][number] }) {
  const t = useTell();
  const { reader } = useSettings();
  return (
    <FactTable
      caption={t`${finName(pair.id, reader)}, by taut tape`}
      heads={[t`diagonal`, t`left`, t`right`, t`left less right`, t`1 mm across`, t`1 mm along`]}
      rows={pair.diagonals.map((diagonal) => {
        const [, to] = diagonal.id.split("-");
        const at = `finset.pairs[${pair.id}].diagonals[${diagonal.id}]`;
        return {
          id: diagonal.id,
          name: t`${STARTS[diagonal.from]} to ${to ?? ""} mark`,
          cells: [
            <TapeAmount key="left" ofM={diagonal.leftTapeM} why={`${at}.leftTapeM`} />,
            <TapeAmount key="right" ofM={diagonal.rightTapeM} why={`${at}.rightTapeM`} />,
            <Millimetres
              key="differ"
              text={formatDifference(diagonal.differM, reader)}
              why={`${at}.differM`}
            />,
            <Millimetres
              key="across"
              text={formatDiagonalWorth(diagonal.acrossWorthRatio, reader)}
              why={`${at}.acrossWorthRatio`}
            />,
            <Millimetres
              key="along"
              text={formatDiagonalWorth(diagonal.alongWorthRatio, reader)}
              why={`${at}.alongWorthRatio`}
            />,
          ],
        };
      })}
    />
  );
}
