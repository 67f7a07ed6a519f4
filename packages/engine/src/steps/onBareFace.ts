import type { Face } from "../layup/LayupPlan";
import type { Choices } from "./Choices";
import type { NeedRow } from "./StepRow";

/** Whether none of these faces has cloth. */
export const isBare =
  (...faces: readonly Face[]) =>
  (choices: Choices): boolean =>
    faces.every((face) => !choices.hasCloth[face]);

/** What the bottom's cloth would have waited for, where none is laid. */
export const ON_BARE_BOTTOM: readonly NeedRow[] = [
  { step: "prep", until: "hands-off", when: isBare("bottom"), because: "dust stays under the coat" },
  {
    step: "mark-fins",
    until: "hands-off",
    when: isBare("bottom"),
    because: "the marks must lie under the glass",
  },
];

/** The fill coat lies on the seal itself where a face has no cloth. */
export const onSealOf = (face: Face): NeedRow => ({
  step: `seal-${face}`,
  until: "recoat",
  because: "the coat bonds to the seal while it is still green",
  when: isBare(face),
});
