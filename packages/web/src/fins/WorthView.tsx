import { worthWords } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Fractions } from "../shared/Fractions";
import type { FinMark } from "./FinsForm";

/** What a millimetre at each point is worth in toe, so that a builder knows why to use the string. */
export function WorthView({ mark }: { mark: FinMark }) {
  const t = useTell();
  const { reader } = useSettings();
  return (
    <div className="worth">
      <h4>{t`What a millimetre is worth`}</h4>
      <dl>
        {worthWords(mark, reader).map(({ name, turns }) => (
          <div key={name}>
            <dt>
              <Fractions text={name} />
            </dt>
            <dd>{turns}</dd>
          </div>
        ))}
      </dl>
      <p className="quiet">{t`A base is short and a string is long: set the toe by the string.`}</p>
    </div>
  );
}
