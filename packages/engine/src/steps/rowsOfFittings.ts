import type { Choices } from "./Choices";
import { coat, work } from "./labour";
import type { NeedRow, StepRow } from "./StepRow";

/** Where in the work the boxes and the plug are set. */
type Place = NonNullable<Choices["plug"]>;

/** What must have happened before the router touches the bottom, and before the hole saw touches the deck. */
const BEFORE_CUTTING: Readonly<
  Record<Place, { readonly bottom: readonly NeedRow[]; readonly deck: readonly NeedRow[] }>
> = {
  "before-glass": {
    bottom: [
      { step: "prep", until: "hands-off", because: "the pockets go into the finished foam" },
      { step: "seal-bottom", until: "sandable", because: "a router tears a soft seal" },
    ],
    deck: [
      { step: "prep", until: "hands-off", because: "the pocket goes into the finished foam" },
      { step: "seal-deck", until: "sandable", because: "a cutter tears a soft seal" },
    ],
  },
  "after-laminate": {
    bottom: [
      { step: "laminate-bottom", until: "sandable", because: "a router tears a laminate that is still soft" },
      { step: "trim-deck", until: "hands-off", because: "the board lies on its deck now" },
      { step: "laminate-deck", until: "flip", because: "the board lies on it now" },
    ],
    deck: [
      { step: "laminate-deck", until: "sandable", because: "a cutter tears a laminate that is still soft" },
      {
        step: "prep",
        until: "hands-off",
        when: ({ hasCloth }) => !hasCloth.deck,
        because: "the pocket goes into the finished foam",
      },
      {
        step: "seal-deck",
        until: "sandable",
        when: ({ hasCloth }) => !hasCloth.deck,
        because: "a cutter tears a soft seal",
      },
    ],
  },
  "after-fill": {
    bottom: [
      { step: "fill-bottom", until: "sandable", because: "a router tears a coat that is still soft" },
      { step: "fill-deck", until: "flip", because: "the board lies on it now" },
    ],
    deck: [{ step: "fill-deck", until: "sandable", because: "a cutter tears a coat that is still soft" }],
  },
};

const isAt = (place: Place) => (choices: Choices) => choices.boxes === place;
const hasPlugAt = (place: Place) => (choices: Choices) => choices.plug === place;

/** Fin boxes and leash plug, at the place in the work that the kind of box asks for. */
export const rowsOfFittings = (place: Place): readonly StepRow[] => [
  ...rowsOfBoxes(place),
  ...rowsOfPlug(place),
];

function rowsOfBoxes(place: Place): readonly StepRow[] {
  return [
    {
      id: "set-boxes",
      title: "Rout the pockets and try the boxes dry",
      when: isAt(place),
      because:
        "the marks are checked once more before anything is cut, and a box is tried before the resin is mixed",
      needs: [
        { step: "mark-fins", until: "hands-off", because: "the frame is set to the marks" },
        ...BEFORE_CUTTING[place].bottom,
      ],
      labour: work("routing"),
      cautions: ["mark-and-verify", "router", "glass-dust"],
    },
    {
      id: "boxes",
      title: "Pour the boxes in",
      when: isAt(place),
      because: "a box that is not sealed all round lets water into the foam",
      needs: [
        { step: "set-boxes", until: "hands-off", because: "the boxes must fit before the resin is mixed" },
      ],
      labour: coat("boxes", "box"),
      cautions: [],
    },
  ];
}

function rowsOfPlug(place: Place): readonly StepRow[] {
  return [
    {
      id: "set-leash-plug",
      title: "Cut the leash plug's hole and try it dry",
      when: hasPlugAt(place),
      because: "the plug is tried before the resin is mixed, clear of the boxes beneath",
      needs: [
        ...BEFORE_CUTTING[place].deck,
        {
          step: "boxes",
          until: "flip",
          when: isAt(place),
          because: "the board is turned onto it, and the plug must clear what lies beneath",
        },
      ],
      labour: work("plug"),
      cautions: ["flip", "router", "glass-dust"],
    },
    {
      id: "leash-plug",
      title: "Pour the leash plug in",
      when: hasPlugAt(place),
      because: "it takes the whole pull of a lost board",
      needs: [
        {
          step: "set-leash-plug",
          until: "hands-off",
          because: "the plug must fit before the resin is mixed",
        },
      ],
      labour: coat("leash-plug", "box"),
      cautions: ["leash-plug"],
    },
  ];
}

/** Fins that are glassed to the board itself, after the laminate. */
export const ROWS_OF_GLASSED_FINS: readonly StepRow[] = [
  {
    id: "set-boxes",
    title: "Stand the fins on their marks and tack them",
    when: ({ boxes }) => boxes === "glassed-on",
    because: "toe and cant are set now and cannot be changed afterwards",
    needs: [
      { step: "mark-fins", until: "hands-off", because: "the fins stand on the marks" },
      { step: "laminate-bottom", until: "recoat", because: "the tack bonds to a laminate that has set" },
      { step: "trim-deck", until: "hands-off", because: "the board lies on its deck now" },
      { step: "laminate-deck", until: "flip", because: "the board lies on it now" },
    ],
    labour: work("tacking"),
    cautions: ["mark-and-stand", "flip"],
  },
  {
    id: "boxes",
    title: "Glass the fins on: rope in the corners, patches over the sides",
    when: ({ boxes }) => boxes === "glassed-on",
    because: "the fill coat then runs over fins and bottom in one",
    needs: [
      { step: "set-boxes", until: "hands-off", because: "the tacks hold the fins while they are glassed" },
    ],
    labour: coat("boxes", "laminate"),
    materials: ["glass rope, or filler for the corners"],
    cautions: ["knife"],
  },
];
