import { coat } from "./labour";
import { isBare, ON_BARE_BOTTOM, onSealOf } from "./onBareFace";
import type { StepRow } from "./StepRow";

const always = () => true;

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
