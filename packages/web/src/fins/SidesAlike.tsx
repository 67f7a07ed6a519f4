import { length } from "@lapline/engine";
import { checkName, readingWords } from "@lapline/present";
import { ENGLISH } from "../settings/english";
import { Amount } from "../shared/Amount";
import type { VerifyCheck } from "./FinsForm";
import { StateWord } from "./StateWord";
import { Tolerance } from "./Tolerance";

/** The two sides against each other: nothing to type, it follows from the marks. */
export function SidesAlike({ check }: { check: VerifyCheck }) {
  return (
    <div className="reading">
      <p className="reading-name">{checkName(check, ENGLISH)}</p>
      <StateWord check={check} />
      <p className="quiet">
        {check.lengths.map(({ id, readM, toleranceM }, i) => (
          <span key={id}>
            {i > 0 && ", "}
            {readingWords(id, ENGLISH)} {readM === null ? "not read" : <Amount of={length(readM, "fine")} />}
            {i === check.lengths.length - 1 && toleranceM !== null && (
              <>
                ; within <Tolerance of={length(toleranceM)} />
              </>
            )}
          </span>
        ))}
      </p>
    </div>
  );
}
