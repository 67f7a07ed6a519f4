import { coat, work } from "./labour";
import type { NeedRow, StepRow } from "./StepRow";

const always = () => true;

const SANDED: readonly NeedRow[] = [
  { step: "sand-bottom", until: "hands-off", because: "scratches and shine show through what follows" },
  { step: "sand-deck", until: "hands-off", because: "scratches and shine show through what follows" },
];

const SAND_BOTTOM_TITLES = {
  none: "Sand the bottom",
  boxes: "Sand the bottom, boxes flush",
  "glassed-on": "Sand the bottom, by hand around the fins",
} as const;

const LAST_LOOK_TITLES = {
  plug: {
    none: "Last look: no foam, plug firm and pulled, weighed, wax and leash on",
    boxes: "Last look: no foam, boxes and plug firm, plug pulled, fins tried, weighed, wax and leash on",
    "glassed-on": "Last look: no foam, fins and plug firm, plug pulled, weighed, wax and leash on",
  },
  bare: {
    none: "Last look: no foam, weighed, wax on",
    boxes: "Last look: no foam, boxes firm, fins tried, weighed, wax on",
    "glassed-on": "Last look: no foam, fins firm, weighed, wax on",
  },
} as const;

/** The first sanding, through the fill coat's top and no further. */
export const ROWS_OF_SANDING: readonly StepRow[] = [
  {
    id: "sand-bottom",
    title: ({ boxes }) =>
      SAND_BOTTOM_TITLES[boxes === null || boxes === "glassed-on" ? (boxes ?? "none") : "boxes"],
    when: always,
    because: "the water leaves the board from the bottom's edges, and they are made first",
    needs: [
      { step: "fill-bottom", until: "sandable", because: "soft resin clogs the paper and tears" },
      { step: "fill-deck", until: "flip", because: "the board lies on it now" },
      {
        step: "boxes",
        until: "sandable",
        when: ({ boxes }) => boxes !== "glassed-on",
        because: "resin about a box goes on shrinking until it is firm",
      },
      {
        step: "boxes",
        until: "sandable",
        when: ({ boxes }) => boxes === "glassed-on",
        because: "the glass about a fin tears while it is soft",
      },
      { step: "leash-plug", until: "flip", because: "the board lies on it now" },
    ],
    labour: work("sanding", "bottom"),
    cautions: ["glass-dust"],
  },
  {
    id: "sand-deck",
    title: "Sand the deck and the rails",
    when: always,
    because: "rails and laps carry the thinnest film and come last, with the lightest hand",
    needs: [
      { step: "fill-deck", until: "sandable", because: "soft resin clogs the paper and tears" },
      {
        step: "leash-plug",
        until: "sandable",
        because: "resin about the plug goes on shrinking until it is firm",
      },
      { step: "sand-bottom", until: "hands-off", because: "the rails are blended from a finished bottom" },
    ],
    labour: work("sanding", "deck"),
    cautions: ["glass-dust"],
  },
];

/** From the sanded board to the water. */
export const ROWS_OF_FINISH: readonly StepRow[] = [
  {
    id: "vent",
    title:
      "Set the vent on the deck beside the stringer, ahead of the front foot, sealed round with epoxy; open in heat, in the car and in flight, closed before the water",
    when: ({ hasVent }) => hasVent,
    because: "air in polystyrene foam swells with heat and height and lifts the glass off it",
    needs: [{ step: "sand-deck", until: "hands-off", because: "the hole goes into the finished deck" }],
    labour: work("vent"),
    materials: ["a vent screw with its seal", "a drill bit of its size", "epoxy"],
    cautions: [],
    isAfterRepairs: true,
  },
  {
    id: "pinline",
    title: ({ finish }) =>
      finish === "gloss"
        ? "Tape and pull the pinline over the laps' edge, before the gloss coat covers it"
        : "Tape and pull the pinline over the laps' edge, and brush a thin coat over it",
    when: ({ hasPinline }) => hasPinline,
    because: "it hides the edge of a tinted or cut lap",
    needs: SANDED,
    labour: work("pinline"),
    materials: ["fine line tape", "paint pen, or resin with pigment and a fine brush"],
    cautions: [],
    isAfterRepairs: true,
  },
  {
    id: "gloss-bottom",
    title: "Gloss coat on the bottom",
    when: ({ finish }) => finish === "gloss",
    because: "one thin coat closes what the sander opened",
    needs: [...SANDED, { step: "pinline", until: "hands-off", because: "the gloss coat lies over it" }],
    labour: coat("gloss-bottom", "gloss"),
    cautions: [],
    isAfterRepairs: true,
  },
  {
    id: "gloss-deck",
    title: "Gloss coat on the deck",
    when: ({ finish }) => finish === "gloss",
    because: "one thin coat closes what the sander opened",
    needs: [{ step: "gloss-bottom", until: "flip", because: "the board lies on it now" }],
    labour: coat("gloss-deck", "gloss"),
    cautions: ["flip"],
  },
  {
    id: "wet-sand",
    title: "Wet-sand, most carefully the bottom and the edges that the water leaves from",
    when: ({ finish }) => finish !== "sanded",
    because: "each finer grit only takes out the scratches of the one before",
    needs: [
      ...SANDED,
      { step: "gloss-bottom", until: "sandable", because: "soft resin clogs the paper and tears" },
      { step: "gloss-deck", until: "sandable", because: "soft resin clogs the paper and tears" },
    ],
    labour: work("wetSanding", "bottom", "deck"),
    cautions: ["wet-tools"],
    isAfterRepairs: true,
  },
  {
    id: "polish",
    title: "Polish with compound",
    when: ({ finish }) => finish === "gloss",
    because: "compound takes out what the finest paper leaves",
    needs: [{ step: "wet-sand", until: "hands-off", because: "a deep scratch never polishes out" }],
    labour: work("polishing", "bottom", "deck"),
    cautions: ["polisher"],
  },
  {
    id: "cure-out",
    title: "Let it cure out",
    when: always,
    because:
      "resin that can be sanded is not yet as hard as it becomes: heels dent it, and wax and leash pull at it",
    needs: [
      ...SANDED,
      { step: "vent", until: "hands-off", because: "nothing more is taken off or put on" },
      { step: "pinline", until: "hands-off", because: "nothing more is taken off or put on" },
      { step: "wet-sand", until: "hands-off", because: "nothing more is taken off or put on" },
      { step: "polish", until: "hands-off", because: "nothing more is taken off or put on" },
    ],
    labour: work("rest"),
    cautions: ["soft-cure"],
    isAfterRepairs: true,
    isCureOut: true,
  },
  {
    id: "water",
    title: ({ boxes, plug }) =>
      LAST_LOOK_TITLES[plug === null ? "bare" : "plug"][
        boxes === null || boxes === "glassed-on" ? (boxes ?? "none") : "boxes"
      ],
    when: always,
    because: "what is found on the stand costs an hour, and in the water the board",
    needs: [{ step: "cure-out", until: "hands-off", because: "the board must be cured out" }],
    labour: work("lastLook"),
    materials: ({ boxes, plug, hasVent }) => [
      "a scale",
      "wax for the water's temperature",
      ...(plug === null ? [] : ["the leash"]),
      ...(boxes === null || boxes === "glassed-on" ? [] : ["the fins and what holds them"]),
      ...(hasVent ? ["the vent's screw, closed now and tried"] : []),
    ],
    cautions: ["leash-plug", "water"],
  },
];
