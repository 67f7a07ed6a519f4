import { say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import { quoteText } from "../foundation/quoteText";
import { type Finding, finding } from "../foundation/stage";
import { standingEntries } from "../foundation/standingEntries";
import type { DustReading, FilmReading, SandingBoard } from "./SandingBoard";

export interface SandingReadings {
  /** The latest of each zone. */
  readonly films: readonly FilmReading[];
  /** The latest of each face. */
  readonly dust: readonly DustReading[];
}

/**
 * Film gauged and dust weighed, as they stand after their corrections; a later reading of the same place goes before an earlier.
 * One that names no zone or paper of this board, or cannot be, is refused and left out.
 */
export function readSandingRecord(
  { record = [] }: SandingBoard,
  known: { readonly zones: readonly string[]; readonly grits: readonly string[] },
): { readonly readings: SandingReadings; readonly findings: readonly Finding[] } {
  const films = new Map<string, FilmReading>();
  const dust = new Map<string, DustReading>();
  const findings: Finding[] = [];
  for (const entry of standingEntries(record)) {
    if (entry.kind !== "film" && entry.kind !== "dust") continue;
    const fault = findFault(entry, known);
    if (fault !== null) findings.push(fault);
    else if (entry.kind === "film") films.set(entry.zone, entry);
    else dust.set(entry.face, entry);
  }
  return { readings: { films: [...films.values()], dust: [...dust.values()] }, findings };
}

function findFault(
  entry: FilmReading | DustReading,
  known: { readonly zones: readonly string[]; readonly grits: readonly string[] },
): Finding | null {
  const path = `record[${entry.id}]`;
  if (entry.after !== undefined && !known.grits.includes(entry.after)) {
    const says = say`the reading ${quoteText(entry.id)} stands after ${quoteText(entry.after)}, and no such paper is on this ladder: it is left out`;
    return finding("warning", "sanding.unknown-grit", `${path}.after`, says);
  }
  if (entry.kind === "dust") {
    if (entry.massKg > 0) return null;
    const says = say`the dust ${quoteText(entry.id)} is no mass above nought: it is left out`;
    return finding("blocker", "sanding.dust", `${path}.mass`, says);
  }
  if (!known.zones.includes(entry.zone)) {
    const says = say`the film ${quoteText(entry.id)} is of ${quoteText(entry.zone)}, and this board has no such zone: it is left out`;
    return finding("warning", "sanding.unknown-zone", `${path}.zone`, says);
  }
  if (entry.filmM >= 0) return null;
  const says = Number.isFinite(entry.filmM)
    ? say`a film of ${length(entry.filmM)} cannot be: it is nought or more; the reading is left out`
    : say`a film is a length of nought or more: the reading is left out`;
  return finding("blocker", "sanding.film", `${path}.film`, says);
}
