import type { SourceId } from "../sources/sources";

interface Caution {
  /** The harm and the act, short enough to be read with gloves on. */
  readonly text: string;
  readonly source: SourceId;
}

/** The usual cautions of the trade, to stand at the step where they matter. */
export const CAUTIONS = {
  "foam-dust": {
    text: "Foam dust harms the lungs: particle filter on, extraction running, shop swept before any resin is opened.",
    source: "common-practice",
  },
  "glass-dust": {
    text: "Glass and resin dust harms lungs and skin: particle filter, sleeves and goggles, extraction at the tool. A dust mask is not enough. Never sand resin that is still soft.",
    source: "common-practice",
  },
  "filler-dust": {
    text: "Filler dust harms the lungs and hangs in the air for hours, silica and hollow glass spheres most of all: respirator with particle filter on before the bag is opened, no fan, stir it under the resin at once, wipe up damp.",
    source: "common-practice",
  },
  knife: {
    text: "A knife slips on half-set glass: new blade, cut away from the other hand, gloves on.",
    source: "common-practice",
  },
  router: {
    text: "A router grabs: clamp the frame, set the depth stop, both hands, goggles; pull the plug before the bit is touched.",
    source: "common-practice",
  },
  "mark-and-verify": {
    text: "A hole on the wrong side cannot be undone: bottom up, nose away, name left and right aloud, check string, both diagonals and depth before the first cut.",
    source: "common-practice",
  },
  "mark-and-stand": {
    text: "A fin glassed on out of line is ground off again: bottom up, nose away, name left and right aloud, check string, both diagonals and cant before the first tack.",
    source: "common-practice",
  },
  flip: {
    text: "A board dropped at the flip is a day lost, or a foot hurt: two people, stands padded, floor clear.",
    source: "common-practice",
  },
  peroxide: {
    text: "Peroxide hardener blinds: goggles on before it is opened, poured below face height, 15 minutes of eyewash in reach. It explodes with bare promoter and burns with acetone: never let them meet.",
    source: "peroxide-sheets-safety",
  },
  "peroxide-rags": {
    text: "Rags and spills with peroxide can catch fire hours later: into a lidded metal can outdoors. Store the hardener below 25 °C, away from resin and promoter.",
    source: "peroxide-sheets-safety",
  },
  styrene: {
    text: "Styrene vapour harms and burns, most of it about the time of the gel: organic-vapour cartridges, moving air, no flame, no glowing heater, no sparks. From a house garage it gets into the home.",
    source: "common-practice",
  },
  exotherm: {
    text: "A full cup heats by itself, can smoke, melt foam and catch fire: spread it at once, leave what is over in a flat pan outdoors. No foam or glass cups.",
    source: "exotherm-sheets",
  },
  "warm-resin": {
    text: "Warming over a flame sets vapour alight: warm resin in a water bath before the hardener goes in, and never warm the peroxide.",
    source: "common-practice",
  },
  epoxy: {
    text: "Epoxy and its hardener can make the skin allergic for life: gloves and sleeves, change them when they are wet, no solvent on skin, air moving.",
    source: "common-practice",
  },
  "epoxy-ratio": {
    text: "A wrong ratio never cures: weigh both parts by the sheet's ratio, stir sides and floor of the cup; more hardener does not make it quicker.",
    source: "common-practice",
  },
  sunlight: {
    text: "Daylight sets this resin within minutes, hot where it is thick: keep cup and board in the dark until it lies right, and eyes away from curing lamps.",
    source: "common-practice",
  },
  "eps-pour": {
    text: "Polystyrene foam softens from about 75 °C, and a deep pour of resin gets hotter than that: pour boxes and plugs in stages, each cooled before the next.",
    source: "eps-softening",
  },
  "wet-tools": {
    text: "Water and mains tools kill: sand wet by hand or with an air tool, machines on a residual-current switch.",
    source: "common-practice",
  },
  polisher: {
    text: "A polisher grabs at edges and fins and throws them: goggles, work off the edge, never onto it.",
    source: "common-practice",
  },
  "leash-plug": {
    text: "A plug that was never pulled is not ready: a lost board can drown somebody. Pull-test it once it is cured, before the first wave.",
    source: "common-practice",
  },
  "soft-cure": {
    text: "Resin not yet cured out dents, and its vapour stays in the room: store the board in moving air, not where people sleep, and no dark board in the sun.",
    source: "common-practice",
  },
  water: {
    text: "Fin edges cut: round them over. First waves small, leash on, wax on, and look at fins, edges and leash afterwards.",
    source: "common-practice",
  },
  sheet: {
    text: "The safety data sheet, local codes and licensed practice go before anything said here.",
    source: "convention",
  },
} as const satisfies Record<string, Caution>;

export type CautionId = keyof typeof CAUTIONS;

/** What stands at every pour of a resin of that kind. */
export const RESIN_CAUTIONS = {
  peroxide: ["peroxide", "styrene", "exotherm", "warm-resin", "peroxide-rags"],
  "two-part": ["epoxy", "epoxy-ratio", "exotherm"],
  sunlight: ["sunlight", "styrene"],
} as const satisfies Record<string, readonly CautionId[]>;
