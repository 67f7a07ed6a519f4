import { length, type Plan } from "@lapline/engine";
import { pieceName, tell, tellText } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { Figures } from "../shared/Figures";

/** The coat's pieces in the order in which they go on, and how far the cloth laps round. */
export function LayCard({ plan, coat }: { plan: Plan; coat: string }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const pieces = plan.layup?.pieces.filter((piece) => piece.coat === coat) ?? [];
  const face = plan.layup?.faces.find(({ id }) => id === pieces.find(({ extent }) => extent === null)?.face);
  const patch = (extent: NonNullable<(typeof pieces)[number]["extent"]>) =>
    t`from ${length(extent.fromTailTapeM)} to ${length(extent.toTapeM)} from the tail`;
  return (
    <>
      {face !== undefined && face.lapM > 0 && (
        <Figures
          entries={[
            {
              name: t`lap, from the rail's widest line`,
              of: length(face.lapM),
              why: `layup.faces[${face.id}].lapM`,
            },
          ]}
        />
      )}
      <ol className="lay-list">
        {pieces.map(({ id, cloth, extent }) => (
          <li key={id}>
            <b>{pieceName(id, reader)}</b> {tellText(cloth, reader)}
            {extent !== null && `, ${patch(extent)}`}
          </li>
        ))}
      </ol>
    </>
  );
}
