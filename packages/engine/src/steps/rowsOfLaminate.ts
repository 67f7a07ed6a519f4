import type { Face } from "../layup/LayupPlan";
import type { Choices } from "./Choices";
import { coat, work } from "./labour";
import { ON_BARE_BOTTOM } from "./onBareFace";
import type { StepRow } from "./StepRow";

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

const trimTitle =
  (face: Face) =>
  ({ lapKind }: Choices) =>
    TRIM_TITLES[face][lapKind];

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
