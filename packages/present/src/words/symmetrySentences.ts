import type { Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { centrelineWords, symmetryWords } from "./symmetryWords";

/**
 * What can be said of how true the board is: nothing where only whole widths were read at all, because a side nobody measured
 * agrees with nothing.
 * @param besideFindings leaves out what a finding of the plan says, for where both stand together
 */
export function symmetrySentences(plan: Plan, reader: Reader, besideFindings = false): readonly string[] {
  const { shape } = plan;
  const found = (code: string): boolean => plan.findings.some((finding) => finding.code === code);
  const unknown = plan.findings.some(
    (finding) => finding.code === "shape.symmetry-unknown" && finding.severity === "warning",
  );
  if (shape === null || unknown) return [];
  return [
    ...(besideFindings && found("shape.asymmetry") ? [] : [symmetryWords(shape.symmetry, reader)]),
    ...(besideFindings && found("shape.centreline") ? [] : [centrelineWords(shape.symmetry, reader)]),
  ];
}
