import type { BoardFile } from "@lapline/contract";
import { fieldWords, finName, type Reader, tell } from "@lapline/present";
import { type FieldPath, fieldAt, parseFieldPath } from "./withField";

/** A field of the board file as a person knows it: `station 5, left`, `front: cant`, `strings, front left: beside nose`. */
export function fieldName(file: BoardFile, path: string, reader: Reader): string {
  const t = tell(reader);
  const told = (step: string | number) => fieldWords(String(step), reader);
  const steps = parseFieldPath(path).filter((step, i) => i > 0 || step !== "survey");
  const at = steps.findLastIndex((step) => typeof step === "number");
  if (at === -1) return steps.map(told).join(", ");
  const field = steps.slice(at + 1).map(told);
  // Stations are counted from one, as they stand in the survey.
  if (steps[0] === "stations") return [t`station ${Number(steps[at]) + 1}`, ...field].join(", ");
  const entry = nameOfEntry(file, steps.slice(0, at + 1), reader);
  return [entry, field.join(", ")].filter((part) => part !== "").join(": ");
}

/** A fin of the set goes by its name, any other entry by its list as well. */
function nameOfEntry(file: BoardFile, path: FieldPath, reader: Reader): string {
  const list = String(path.at(-2) ?? "");
  const entry = fieldAt(file, path);
  const { fin, side } = (typeof entry === "object" && entry !== null ? entry : {}) as Record<string, unknown>;
  const name = [fin, side].filter((part) => typeof part === "string").join(" ");
  if (name === "") return `${fieldWords(list, reader)} ${Number(path.at(-1)) + 1}`;
  return list === "set" ? finName(name, reader) : `${fieldWords(list, reader)}, ${finName(name, reader)}`;
}
