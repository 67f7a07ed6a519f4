import { fraction, length, mass } from "@lapline/engine";
import { aheadSentences, tell, weighinSentences } from "@lapline/present";
import { NoteForm } from "../record/NoteForm";
import { quantityProblem } from "../record/quantityProblem";
import { useSettings } from "../settings/Settings";
import { Figures } from "../shared/Figures";
import { Fractions } from "../shared/Fractions";
import { stageName } from "../weight/stageName";
import { writeWeighing } from "../weight/writeWeighing";
import type { BenchHand } from "./BenchHand";

/** The scale's reading by big keys, and at once what the plan says of it. */
export function WeighCard({ hand, after }: { hand: BenchHand; after: string }) {
  const { reader } = useSettings();
  const t = tell(reader);
  return (
    <NoteForm
      className="weighing"
      label={t`On the scale: ${stageName(after, reader)}`}
      dimension="mass"
      problemOf={(text) => quantityProblem(text, "mass")}
      write={(typed) => writeWeighing({ file: hand.draft.file, edit: hand.edit }, after, typed)}
    >
      <Said hand={hand} after={after} />
    </NoteForm>
  );
}

/** What stayed on, how that stands to the plan, and the film or the next coat that follows. */
function Said({ hand, after }: { hand: BenchHand; after: string }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const { weighins, weight } = hand.draft.good.plan;
  const entry = weighins?.entries.find((each) => each.after === after);
  const planned = weight?.stages.find(({ id }) => id === after);
  if (entry === undefined || weighins === null)
    return planned === undefined ? null : (
      <p>{t`By plan ${mass(planned.massKg)} (${mass(planned.massLowKg)} to ${mass(planned.massHighKg)}).`}</p>
    );
  const ahead = weighins.ahead.filter(({ by }) => by === entry.id);
  const [next] = ahead;
  const { keptKg, keptRatio, filmM } = entry;
  return (
    <>
      <p role="status">{t`On the scale it was ${mass(entry.massKg)}; by plan ${mass(entry.plannedKg)}.`}</p>
      {keptKg !== null && keptRatio !== null && (
        <Figures
          entries={[
            { name: t`resin kept`, of: mass(keptKg), why: `weighins.entries[${entry.id}].keptKg` },
            { name: t`of the plan`, of: fraction(keptRatio), why: `weighins.entries[${entry.id}].keptRatio` },
            ...(filmM !== null
              ? [{ name: t`film`, of: length(filmM), why: `weighins.entries[${entry.id}].filmM` }]
              : next !== undefined
                ? [
                    {
                      name: t`next of its kind, mixed`,
                      of: mass(next.resinMassKg),
                      why: `weighins.ahead[${next.id}].resinMassKg`,
                    },
                  ]
                : []),
          ]}
        />
      )}
      <ul className="told">
        {[...weighinSentences(entry, reader), ...aheadSentences({ ...weighins, ahead }, reader)].map(
          (sentence) => (
            <li key={sentence}>
              <Fractions text={sentence} />
            </li>
          ),
        )}
      </ul>
    </>
  );
}
