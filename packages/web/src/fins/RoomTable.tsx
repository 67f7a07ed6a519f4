import { length } from "@lapline/engine";
import { finName } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Amount } from "../shared/Amount";
import { FactTable } from "../shared/FactTable";
import type { Finset } from "./FinsForm";

/** The room around each box, or around each base without one. */
export function RoomTable({ finset }: { finset: Finset }) {
  const { reader } = useSettings();
  const t = useTell();
  const show = (valueM: number | null, why: string) => (
    <Amount of={valueM === null ? null : length(valueM)} why={`finset.${why}`} />
  );
  return (
    <FactTable
      caption={t`Room around each box, or each base without one`}
      captionUnseen
      heads={[
        t`fin`,
        t`foam above`,
        t`foam beside`,
        t`to rail`,
        t`to stringer`,
        t`to the next`,
        t`bottom under base`,
      ]}
      rows={finset.clearances.map((room) => ({
        id: room.id,
        name: finName(room.id, reader),
        cells: [
          show(
            finset.marks.find(({ id }) => id === room.id)?.foamUnderM ?? null,
            `marks[${room.id}].foamUnderM`,
          ),
          show(room.foamBesideM, `clearances[${room.id}].foamBesideM`),
          show(room.toRailM, `clearances[${room.id}].toRailM`),
          show(room.toStringerM, `clearances[${room.id}].toStringerM`),
          <>
            {show(room.toNextM, `clearances[${room.id}].toNextM`)}{" "}
            {room.next !== null && <span className="quiet">{finName(room.next, reader)}</span>}
          </>,
          <>
            {show(Math.abs(room.bowUnderBaseM), `clearances[${room.id}].bowUnderBaseM`)}{" "}
            <span className="quiet">{room.bowUnderBaseM > 0 ? t`hollow` : t`round`}</span>
          </>,
        ],
      }))}
    />
  );
}
