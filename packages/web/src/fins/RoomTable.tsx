import { length } from "@lapline/engine";
import { finName } from "@lapline/present";
import { ENGLISH } from "../settings/english";
import { Amount } from "../shared/Amount";
import { FactTable } from "../shared/FactTable";
import type { Finset } from "./FinsForm";

/** The room around each box, or around each base without one. */
export function RoomTable({ finset }: { finset: Finset }) {
  const show = (valueM: number | null) => <Amount of={valueM === null ? null : length(valueM)} />;
  return (
    <FactTable
      caption="Room around each box, or each base without one"
      captionUnseen
      heads={[
        "fin",
        "foam above",
        "foam beside",
        "to rail",
        "to stringer",
        "to the next",
        "bottom under base",
      ]}
      rows={finset.clearances.map((room) => ({
        id: room.id,
        name: finName(room.id, ENGLISH),
        cells: [
          show(finset.marks.find(({ id }) => id === room.id)?.foamUnderM ?? null),
          show(room.foamBesideM),
          show(room.toRailM),
          show(room.toStringerM),
          <>
            {show(room.toNextM)}{" "}
            {room.next !== null && <span className="quiet">{finName(room.next, ENGLISH)}</span>}
          </>,
          <>
            {show(Math.abs(room.bowUnderBaseM))}{" "}
            <span className="quiet">{room.bowUnderBaseM > 0 ? "hollow" : "round"}</span>
          </>,
        ],
      }))}
    />
  );
}
