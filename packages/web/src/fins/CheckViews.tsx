import { length, type Plan } from "@lapline/engine";
import { checkDrawing, finName } from "@lapline/present";
import { useCallback } from "react";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { ENGLISH } from "../settings/english";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import { FactTable } from "../shared/FactTable";
import { Fold } from "../shared/Fold";
import { TapeAmount } from "../shared/TapeAmount";
import type { Finset } from "./FinsForm";

/** What proves each pair before it is cut: strings and diagonals on the whole board, and both figures of each diagonal. */
export function CheckViews({ plan, finset }: { plan: Plan; finset: Finset }) {
  if (finset.pairs.length === 0) return null;
  return (
    <Fold title="String and diagonals">
      <p>
        Equal diagonals prove symmetry about the line through the nose tip and the tail's middle, and no more.
        Where each side follows its own rail, or the set is laid out about another line, they differ on
        purpose: hold each side to its own figure.
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

function CheckView({ plan, fin }: { plan: Plan; fin: string }) {
  const { reader } = useSettings();
  const draw = useCallback(
    (widthMm: number) => checkDrawing(plan, fin, { reader, widthMm }),
    [plan, fin, reader],
  );
  return (
    <SheetDrawing
      title={`${plan.name}, string and diagonals of the ${finName(fin, ENGLISH)} fins`}
      desc="The whole board, bottom up; the figures stand in the table beside it."
      draw={draw}
    />
  );
}

function DiagonalTable({ pair }: { pair: Finset["pairs"][number] }) {
  return (
    <FactTable
      caption={`${finName(pair.id, ENGLISH)}, by taut tape`}
      heads={["diagonal", "left", "right", "left less right"]}
      rows={pair.diagonals.map((diagonal) => {
        const [from, to] = diagonal.id.split("-");
        return {
          id: diagonal.id,
          name: `${from === "nose" ? "nose tip" : "tail's middle"} to ${to} mark`,
          cells: [
            <TapeAmount key="left" ofM={diagonal.leftTapeM} />,
            <TapeAmount key="right" ofM={diagonal.rightTapeM} />,
            <Amount key="differ" of={length(diagonal.differM)} />,
          ],
        };
      })}
    />
  );
}
