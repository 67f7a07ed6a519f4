import { BULGE_SHARE } from "../constants/repairs";
import { say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import { quoteText } from "../foundation/quoteText";
import { type Finding, finding } from "../foundation/stage";
import type { RecordEntry } from "./RecordEntry";
import type { SandThrough, SandThroughEntry, Standing } from "./Standing";
import type { StepsInput } from "./StepsInput";

/**
 * What happened, oldest first, with every entry that a later one corrects left out. A corrected entry keeps its place and
 * number, whatever it now says. A place that is not on the board is refused.
 * @param board its length and readings, for places on it
 */
export function readRecord(
  record: readonly RecordEntry[],
  { lengthM, stations = [] }: StepsInput["survey"],
): { readonly standing: Standing; readonly findings: readonly Finding[] } {
  const halfWidthM = widestHalfM(stations);
  const findings: Finding[] = checkCorrections(record);
  const slots: Array<{ readonly ids: string[]; readonly first: RecordEntry; now: RecordEntry }> = [];
  for (const entry of record) {
    const { id, corrects } = entry;
    const slot = corrects === undefined ? undefined : slots.find(({ ids }) => ids.includes(corrects));
    if (slot === undefined) slots.push({ ids: [id], first: entry, now: entry });
    else {
      slot.ids.push(id);
      slot.now = entry;
    }
  }
  const wasThrough = slots.filter(({ first }) => first.kind === "sand-through");
  const isThrough = slots.filter(
    ({ first, now }) => first.kind !== "sand-through" && now.kind === "sand-through",
  );
  const sandThroughs = [...wasThrough, ...isThrough].flatMap(({ now }, i): SandThrough[] => {
    if (now.kind !== "sand-through") return [];
    if (isOnBoard(now, lengthM, halfWidthM)) return [{ number: i + 1, entry: now }];
    findings.push(offBoard(now, lengthM));
    return [];
  });
  const done = slots.flatMap(({ now }) => (now.kind === "done" ? [now] : []));
  return { standing: { done, sandThroughs }, findings };
}

function checkCorrections(record: readonly RecordEntry[]): Finding[] {
  return record.flatMap((entry, i) => {
    if (entry.corrects === undefined) return [];
    if (record.slice(0, i).some(({ id }) => id === entry.corrects)) return [];
    const says = say`${quoteText(entry.id)} corrects ${quoteText(entry.corrects)}, and no earlier entry has that id: it stands as an entry of its own`;
    return [finding("warning", "steps.corrects-nothing", `record[${entry.id}].corrects`, says)];
  });
}

/** From the stringer to the rail at the widest reading, and a little more; no limit where no width was read. */
function widestHalfM(stations: NonNullable<StepsInput["survey"]["stations"]>): number {
  const halvesM = stations.flatMap(({ leftM, rightM, widthM }) => [
    leftM ?? 0,
    rightM ?? 0,
    (widthM ?? 0) / 2,
  ]);
  const widestM = Math.max(0, ...halvesM);
  return widestM > 0 ? widestM * (1 + BULGE_SHARE.value) : Number.POSITIVE_INFINITY;
}

function isOnBoard(entry: SandThroughEntry, lengthM: number, halfWidthM: number): boolean {
  const { fromTailM, fromCentrelineM, sizeM } = entry;
  return (
    fromTailM >= 0 &&
    fromTailM <= lengthM &&
    fromCentrelineM >= 0 &&
    fromCentrelineM <= halfWidthM &&
    sizeM > 0 &&
    sizeM <= lengthM
  );
}

function offBoard(entry: SandThroughEntry, lengthM: number): Finding {
  const { fromTailM, fromCentrelineM, sizeM } = entry;
  const says = [fromTailM, fromCentrelineM, sizeM].every(Number.isFinite)
    ? say`the sand-through at ${length(fromTailM)} from the tail and ${length(fromCentrelineM)} from the centreline, ${length(sizeM)} across, is not on a board of ${length(lengthM)}: measure it again; it is left out`
    : say`the sand-through is not on a board of ${length(lengthM)}: measure it again; it is left out`;
  return finding("blocker", "steps.off-board", `record[${entry.id}].fromTail`, says);
}
