import type { Plan } from "@lapline/engine";
import { type Reader, stepTitle, tell, tellText, zoneName } from "@lapline/present";
import type { RecordEntry } from "./newEntry";

interface Written {
  readonly plan: Plan;
  /** Where an entry stands in the record, from one: ids are made by devices and say nothing to a person. */
  readonly numberOf: (id: string) => number;
}

/** What an entry of the record says happened, with its quantities as they were typed. */
export function entryWords(entry: RecordEntry, { plan, numberOf }: Written, reader: Reader): string {
  const t = tell(reader);
  const titleOf = (id: string) =>
    stepTitle(plan.steps?.find((step) => step.id === id)?.title ?? id, reader).split(/[,;]/)[0] ?? id;
  switch (entry.kind) {
    case "done":
      return t`Done: ${titleOf(entry.step)}`;
    case "weighed":
      return t`Weighed after ${titleOf(entry.after)}: ${entry.mass}`;
    case "mixed":
      return t`Mixed for ${titleOf(entry.coat)}: ${entry.base} and ${entry.hardener}`;
    case "touched":
      return t`Touched ${titleOf(entry.coat)}: ${tellText(entry.feels, reader)}`;
    case "sand-through":
      return t`${tellText(entry.shows, reader)} shows: ${tellText(entry.face, reader)}, ${tellText(entry.side, reader)}, ${entry.fromTail} from the tail, ${entry.size} across`;
    case "film":
      return entry.after === undefined
        ? t`Film gauged, ${zoneName(entry.zone, reader)}: ${entry.film}, before any paper`
        : t`Film gauged, ${zoneName(entry.zone, reader)}: ${entry.film}, after ${entry.after}`;
    case "dust":
      return t`Dust weighed, ${tellText(entry.face, reader)}: ${entry.mass}, after ${entry.after}`;
    case "struck":
      return t`Struck ${numberOf(entry.corrects)}: it was a slip`;
  }
}
