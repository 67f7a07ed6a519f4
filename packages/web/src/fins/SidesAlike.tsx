import { length } from "@lapline/engine";
import { checkName, readingWords, tell } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import type { VerifyCheck } from "./FinsForm";
import { StateWord } from "./StateWord";
import { toleranceWords } from "./toleranceWords";

/** The two sides against each other: nothing to type, it follows from the marks. */
export function SidesAlike({ check }: { check: VerifyCheck }) {
  const { reader } = useSettings();
  const t = tell(reader);
  return (
    <div className="reading">
      <p className="reading-name">{checkName(check, reader)}</p>
      <StateWord check={check} />
      <p className="quiet">
        {check.lengths.map(({ id, readM, toleranceM }, i) => (
          <span key={id}>
            {i > 0 && ", "}
            {readingWords(id, reader)}{" "}
            {readM === null ? (
              t`not read`
            ) : (
              <Amount
                of={length(readM, "fine")}
                why={`finset.verify.checks[${check.id}].lengths[${id}].readM`}
              />
            )}
            {i === check.lengths.length - 1 &&
              toleranceM !== null &&
              t`; within ${toleranceWords(length(toleranceM), reader)}`}
          </span>
        ))}
      </p>
    </div>
  );
}
