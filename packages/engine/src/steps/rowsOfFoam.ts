import type { FoamKind } from "../constants/foams";
import { coat, work } from "./labour";
import type { StepRow } from "./StepRow";

const always = () => true;

interface Preparation {
  readonly title: string;
  readonly materials: readonly string[];
}

/** What each foam asks for before resin touches it; common practice, no source. */
const PREP: Readonly<Record<FoamKind | "unknown", Preparation>> = {
  pu: {
    title: "Prepare the blank: fill tears, blow off dust, stringer a hair low, no fingerprints",
    materials: ["light filler that the resin bonds to", "block plane for the stringer", "clean gloves"],
  },
  eps: {
    title:
      "Prepare the blank: fill tears and open beads with epoxy and light filler, blow off dust, stringer a hair low; no acetone, no polyester",
    materials: ["epoxy", "light filler", "block plane for the stringer", "alcohol for wiping, never acetone"],
  },
  xps: {
    title:
      "Prepare the blank: scratch the whole skin open so that resin holds, fill tears with epoxy and light filler, blow off dust, stringer a hair low; no acetone, no polyester",
    materials: ["epoxy", "light filler", "coarse paper", "alcohol for wiping, never acetone"],
  },
  unknown: {
    title: "Prepare the blank: find out what foam it is, fill tears, blow off dust, stringer a hair low",
    materials: ["block plane for the stringer", "clean gloves"],
  },
};

/** From the shaped blank to the marks on it. */
export const ROWS_OF_FOAM: readonly StepRow[] = [
  {
    id: "prep",
    title: ({ foam }) => (foam === null ? PREP.unknown : PREP[foam]).title,
    when: always,
    because: "resin shows every tear, and a stringer that stands proud is sanded through first",
    needs: [],
    labour: work("prep"),
    materials: ({ foam }) => (foam === null ? PREP.unknown : PREP[foam]).materials,
    cautions: ["foam-dust"],
  },
  {
    id: "seal-bottom",
    title: "Seal the bottom's foam",
    when: ({ isSealed }) => isSealed,
    because: "open foam drinks the first laminate dry and breathes bubbles into it",
    needs: [{ step: "prep", until: "hands-off", because: "dust under the seal lets go" }],
    labour: coat("seal-bottom", "seal"),
    cautions: [],
  },
  {
    id: "seal-deck",
    title: "Seal the deck's foam",
    when: ({ isSealed }) => isSealed,
    because: "open foam drinks the first laminate dry and breathes bubbles into it",
    needs: [
      { step: "prep", until: "hands-off", because: "dust under the seal lets go" },
      { step: "seal-bottom", until: "flip", because: "the board lies on it now" },
    ],
    labour: coat("seal-deck", "seal"),
    cautions: ["flip"],
  },
  {
    id: "mark-fins",
    title: "Set out the fins and mark them",
    when: ({ boxes }) => boxes !== null,
    because: "marks pencilled on the foam show through the laminate",
    needs: [
      { step: "prep", until: "hands-off", because: "marks go on the finished surface" },
      { step: "seal-bottom", until: "recoat", because: "a pencil tears a wet seal" },
    ],
    labour: work("marking"),
    cautions: ["mark-and-verify"],
  },
];
