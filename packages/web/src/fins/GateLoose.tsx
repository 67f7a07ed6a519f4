import { FindingTape } from "../board/FindingTape";
import { findAsSet } from "./asSetReadings";
import type { Finset, FinsForm } from "./FinsForm";
import { findingsAt, isWithin } from "./findingsAt";

/** What was found at the gate as a whole: what is out is said at its own check, and the verdict at the foot. */
export function GateLoose({ form: { fins, plan }, finset }: { form: FinsForm; finset: Finset }) {
  const shown = finset.marks.map((mark) => `fins.asSet[${findAsSet(fins.asSet, mark)}]`);
  const loose = [...findingsAt(plan, "fins.verify"), ...findingsAt(plan, "fins.asSet")].filter(
    ({ path }) => !shown.some((place) => isWithin(path, place)),
  );
  return loose.map((finding, i) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: two findings may share code and place
    <FindingTape key={`${finding.code} ${i}`} finding={finding} />
  ));
}
