import type { FoamKind } from "../constants/foams";
import type { Face } from "../layup/LayupPlan";
import type { Choices } from "./Choices";
import { coat, work } from "./labour";
import type { NeedRow, StepRow } from "./StepRow";

const always = () => true;

const TRIM_TITLES: Readonly<Record<Face, Readonly<Record<Choices["lapKind"], string>>>> = {
  bottom: {
    cut: "Cut the bottom's laps along the tape, and pull the tape",
    free: "Trim strings and corners off the bottom's laps",
  },
  deck: {
    cut: "Cut the deck's laps along the tape, and pull the tape",
    free: "Trim strings and corners off the deck's laps",
  },
};

const hasCloth =
  (face: Face) =>
  (choices: Choices): boolean =>
    choices.hasCloth[face];

const isBare =
  (...faces: readonly Face[]) =>
  (choices: Choices): boolean =>
    faces.every((face) => !choices.hasCloth[face]);

/** What the bottom's cloth would have waited for, where none is laid. */
const ON_BARE_BOTTOM: readonly NeedRow[] = [
  { step: "prep", until: "hands-off", when: isBare("bottom"), because: "dust stays under the coat" },
  {
    step: "mark-fins",
    until: "hands-off",
    when: isBare("bottom"),
    because: "the marks must lie under the glass",
  },
];

/** The fill coat lies on the seal itself where a face has no cloth. */
const onSealOf = (face: Face): NeedRow => ({
  step: `seal-${face}`,
  until: "recoat",
  because: "the coat bonds to the seal while it is still green",
  when: isBare(face),
});

const trimTitle =
  (face: Face) =>
  ({ lapKind }: Choices) =>
    TRIM_TITLES[face][lapKind];

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

const maskTitle: Readonly<Record<Face, string>> = {
  bottom: "Tape the bottom's cut-lap line on the deck, and hang a skirt below it",
  deck: "Tape the deck's cut-lap line on the bottom, and hang a skirt below it",
};

const maskRow = (face: Face): StepRow => ({
  id: `mask-${face}`,
  title: maskTitle[face],
  when: (choices) => choices.lapKind === "cut" && choices.hasCloth[face],
  because: "a cut lap is only as clean as its tape",
  needs: [
    { step: "prep", until: "hands-off", because: "tape does not hold on dust" },
    face === "bottom"
      ? { step: "seal-deck", until: "recoat", because: "tape tears a wet seal" }
      : { step: "laps-bottom", until: "hands-off", because: "the line runs over the bottom's levelled laps" },
  ],
  labour: work("masking"),
  materials: ["sharp-edged masking tape", "paper or film for the skirt"],
  cautions: [],
});

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

/** Cloth on both faces. */
export const ROWS_OF_LAMINATE: readonly StepRow[] = [
  maskRow("bottom"),
  {
    id: "laminate-bottom",
    title: "Laminate the bottom",
    when: hasCloth("bottom"),
    because: "the bottom goes first, so that the deck's laps cover its edge",
    needs: [
      { step: "mask-bottom", until: "hands-off", because: "the cloth is cut along the tape" },
      { step: "prep", until: "hands-off", because: "dust lifts the cloth" },
      { step: "mark-fins", until: "hands-off", because: "the marks must lie under the glass" },
      {
        step: "seal-bottom",
        until: "recoat",
        because: "the laminate bonds to the seal while it is still green",
      },
      { step: "seal-deck", until: "flip", because: "the board lies on it now" },
      {
        step: "boxes",
        until: "sandable",
        because: "boxes are ground flush before cloth lies over them",
        when: ({ boxes }) => boxes === "before-glass",
      },
    ],
    labour: coat("laminate-bottom", "laminate"),
    cautions: [],
  },
  {
    id: "trim-bottom",
    title: trimTitle("bottom"),
    when: hasCloth("bottom"),
    because: "cloth cuts clean while it is leathery: sooner it drags, later it must be ground",
    needs: [{ step: "laminate-bottom", until: "trim", because: "wet cloth drags under the knife" }],
    labour: work("trim"),
    cautions: ["knife"],
  },
  {
    id: "laps-bottom",
    title: "Level the bottom's laps",
    when: hasCloth("bottom"),
    because: "a proud lap edge bridges the deck's cloth and traps air beside it",
    needs: [
      { step: "trim-bottom", until: "hands-off", because: "untrimmed cloth cannot be levelled" },
      { step: "laminate-bottom", until: "flip", because: "the board is turned onto it" },
    ],
    labour: work("laps"),
    cautions: ["flip", "glass-dust"],
  },
  maskRow("deck"),
  {
    id: "logos",
    title: "Lay the logos on the deck, face up, with a little resin, and smooth them down",
    when: (choices) => choices.hasLogos && choices.hasCloth.deck,
    because: "under the cloth they are sealed in and never sanded",
    needs: [
      ...ON_BARE_BOTTOM,
      { step: "laps-bottom", until: "hands-off", because: "the board lies deck up from here" },
      { step: "laminate-bottom", until: "flip", because: "the board lies on it now" },
    ],
    labour: work("logos"),
    materials: [
      "logos printed on thin paper that resin wets clear",
      "a brush",
      "a cup of the laminating resin",
    ],
    cautions: [],
  },
  {
    id: "laminate-deck",
    title: "Laminate the deck",
    when: hasCloth("deck"),
    because: "its laps run over the bottom's, and the rails end up with both",
    needs: [
      { step: "mask-deck", until: "hands-off", because: "the cloth is cut along the tape" },
      ...ON_BARE_BOTTOM,
      { step: "logos", until: "hands-off", because: "they lie under the cloth" },
      { step: "laps-bottom", until: "hands-off", because: "the cloth must lie down over the laps" },
      { step: "laminate-bottom", until: "flip", because: "the board lies on it now" },
      {
        step: "seal-deck",
        until: "recoat",
        because: "the laminate bonds to the seal while it is still green",
      },
      {
        step: "leash-plug",
        until: "sandable",
        because: "the plug is ground flush before cloth lies over it",
        when: ({ plug }) => plug === "before-glass",
      },
    ],
    labour: coat("laminate-deck", "laminate"),
    cautions: ["flip"],
  },
  {
    id: "trim-deck",
    title: trimTitle("deck"),
    when: hasCloth("deck"),
    because: "cloth cuts clean while it is leathery: sooner it drags, later it must be ground",
    needs: [{ step: "laminate-deck", until: "trim", because: "wet cloth drags under the knife" }],
    labour: work("trim"),
    cautions: ["knife"],
  },
];

/** The coat that is sanded, rails taped. */
export const ROWS_OF_FILL: readonly StepRow[] = [
  {
    id: "fill-bottom",
    title: "Fill coat on the bottom, rails taped",
    when: always,
    because: "it fills the weave and gives the sander a film of its own, so that the glass stays whole",
    needs: [
      ...ON_BARE_BOTTOM,
      onSealOf("bottom"),
      {
        step: "laps-bottom",
        until: "hands-off",
        when: isBare("deck"),
        because: "loose threads stand up in the coat",
      },
      {
        step: "seal-deck",
        until: "flip",
        when: isBare("bottom", "deck"),
        because: "the board lies on it now",
      },
      {
        step: "boxes",
        until: "sandable",
        because: "boxes are ground flush before the coat",
        when: (choices) => choices.boxes === "before-glass" && isBare("bottom")(choices),
      },
      { step: "trim-deck", until: "hands-off", because: "loose threads stand up in the coat" },
      {
        step: "laminate-bottom",
        until: "recoat",
        because: "the coat bonds to a laminate that has set and is still green",
      },
      { step: "laminate-deck", until: "flip", because: "the board lies on it now" },
      {
        step: "boxes",
        until: "sandable",
        because: "boxes are ground flush before the coat",
        when: ({ boxes }) => boxes === "after-laminate",
      },
      {
        step: "boxes",
        until: "sandable",
        because: "the glass about the fins is smoothed before the coat runs over it",
        when: ({ boxes }) => boxes === "glassed-on",
      },
    ],
    labour: coat("fill-bottom", "fill"),
    cautions: ["flip"],
  },
  {
    id: "fill-deck",
    title: "Fill coat on the deck, rails taped",
    when: always,
    because: "it fills the weave and gives the sander a film of its own, so that the glass stays whole",
    needs: [
      { step: "fill-bottom", until: "flip", because: "the board lies on it now" },
      onSealOf("deck"),
      {
        step: "leash-plug",
        until: "sandable",
        because: "the plug is ground flush before the coat",
        when: (choices) => choices.plug === "before-glass" && isBare("deck")(choices),
      },
      {
        step: "laminate-deck",
        until: "recoat",
        because: "the coat bonds to a laminate that has set and is still green",
      },
      {
        step: "leash-plug",
        until: "sandable",
        because: "the plug is ground flush before the coat",
        when: ({ plug }) => plug === "after-laminate",
      },
    ],
    labour: coat("fill-deck", "fill"),
    cautions: ["flip"],
  },
];
