import { fraction, length, mass, parseQuantity } from "@lapline/engine";
import { aheadSentences, tell, weighinSentences } from "@lapline/present";
import { useState } from "react";
import { QuantityField } from "../board/QuantityField";
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
  const [text, setText] = useState("");
  const [isAsked, setAsked] = useState(false);
  const read = parseQuantity(text, "mass");
  const write = () => {
    setAsked(true);
    if (!read.ok) return;
    writeWeighing({ file: hand.draft.file, edit: hand.edit }, after, text);
    setText("");
    setAsked(false);
  };
  return (
    <form
      className="weighing"
      onSubmit={(event) => {
        event.preventDefault();
        write();
      }}
    >
      <Said hand={hand} after={after} />
      <QuantityField
        label={t`On the scale: ${stageName(after, reader)}`}
        value={text}
        dimension="mass"
        problem={isAsked && !read.ok ? read.reason : undefined}
        onType={setText}
      />
      <button type="submit">{t`Write it down`}</button>
    </form>
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
