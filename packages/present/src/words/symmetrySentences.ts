import { length, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { tellPhrase } from "../language/tellPhrase";
import { asSentence } from "./asSentence";

/**
 * How true the board is: what the plan found of its two sides and of its centreline, and where it found nothing that they agree.
 * What counts as a difference the engine alone decides. Nothing is said where only whole widths were read at all, because a
 * side nobody measured agrees with nothing.
 * @param besideFindings leaves out what a finding of the plan says, for where both stand together
 */
export function symmetrySentences(plan: Plan, reader: Reader, besideFindings = false): readonly string[] {
  const t = tell(reader);
  const { shape, findings } = plan;
  const unknown = findings.some(
    ({ code, severity }) => code === "shape.symmetry-unknown" && severity === "warning",
  );
  if (shape === null || unknown) return [];
  const say = (code: string, agree: string): readonly string[] => {
    const found = findings.find((finding) => finding.code === code);
    if (found === undefined) return [agree];
    return besideFindings ? [] : [asSentence(tellPhrase(found.says, reader))];
  };
  const { worstM, worstFromTailM } = shape.symmetry;
  const worst = showQuantity(length(Math.abs(worstM)), { ...reader, units: "mm" });
  const where = showQuantity(length(worstFromTailM), reader);
  return [
    ...say("shape.asymmetry", t`Both sides agree within ${worst}; the most is at ${where} from the tail.`),
    ...say(
      "shape.centreline",
      t`The best-fit centreline lies on the stringer, as near as the readings can tell.`,
    ),
  ];
}
