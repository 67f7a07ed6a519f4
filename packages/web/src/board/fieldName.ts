import type { BoardFile } from "@lapline/contract";
import { finName } from "@lapline/present";
import { ENGLISH } from "../settings/english";
import { type FieldPath, fieldAt, parseFieldPath } from "./withField";

/** A field of the board file as a person knows it: `station 5, left`, `front: cant`, `strings, front left: beside nose`. */
export function fieldName(file: BoardFile, path: string): string {
  const steps = parseFieldPath(path).filter((step, i) => i > 0 || step !== "survey");
  const at = steps.findLastIndex((step) => typeof step === "number");
  if (at === -1) return steps.map((step) => wordsOf(String(step))).join(", ");
  const field = steps.slice(at + 1).map((step) => wordsOf(String(step)));
  // Stations are counted from one, as they stand in the survey.
  if (steps[0] === "stations") return [`station ${Number(steps[at]) + 1}`, ...field].join(", ");
  const entry = nameOfEntry(file, steps.slice(0, at + 1));
  return [entry, field.join(", ")].filter((part) => part !== "").join(": ");
}

/** A fin of the set goes by its name, any other entry by its list as well. */
function nameOfEntry(file: BoardFile, path: FieldPath): string {
  const list = String(path.at(-2) ?? "");
  const entry = fieldAt(file, path);
  const { fin, side } = (typeof entry === "object" && entry !== null ? entry : {}) as Record<string, unknown>;
  const name = [fin, side].filter((part) => typeof part === "string").join(" ");
  if (name === "") return `${wordsOf(list)} ${Number(path.at(-1)) + 1}`;
  return list === "set" ? finName(name, ENGLISH) : `${wordsOf(list)}, ${finName(name, ENGLISH)}`;
}

/** `aimBesideNose` as `aim beside nose`. */
const wordsOf = (name: string): string => name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
