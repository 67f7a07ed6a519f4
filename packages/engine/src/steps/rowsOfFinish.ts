import { coat, work } from "./labour";
import type { NeedRow, StepRow } from "./StepRow";

const always = () => true;

const SANDED: readonly NeedRow[] = [
  { step: "sand-bottom", until: "hands-off", because: "scratches and shine show through what follows" },
  { step: "sand-deck", until: "hands-off", because: "scratches and shine show through what follows" },
];

/** The first sanding, through the fill coat's top and no further. */
export const ROWS_OF_SANDING: readonly StepRow[] = [
  {
    id: "sand-bottom",
    title: "Sand the bottom, boxes flush",
    when: always,
    because: "the water leaves the board from the bottom's edges, and they are made first",
    needs: [
      { step: "fill-bottom", until: "sandable", because: "soft resin clogs the paper and tears" },
      { step: "fill-deck", until: "flip", because: "the board lies on it now" },
      { step: "boxes", until: "sandable", because: "resin about a box goes on shrinking until it is firm" },
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
    id: "gloss-bottom",
    title: "Gloss coat on the bottom",
    when: ({ finish }) => finish === "gloss",
    because: "one thin coat closes what the sander opened",
    needs: SANDED,
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
    title: "Last look: no foam, boxes and plug firm, plug pulled, fins tried, weighed, wax and leash on",
    when: always,
    because: "what is found on the stand costs an hour, and in the water the board",
    needs: [{ step: "cure-out", until: "hands-off", because: "the board must be cured out" }],
    labour: work("lastLook"),
    cautions: ["leash-plug", "water"],
  },
];
