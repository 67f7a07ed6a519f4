import { SCRATCH_SHARE } from "../constants/sandingModel";
import { count, fraction, length } from "../foundation/quantity";
import type { Working, WorkingInput, WorkingTable } from "../foundation/stage";
import { bandWorking } from "../layup/bandWorking";
import { ladderWorking } from "./ladderWorking";
import { fromSanding, type SandingContext } from "./SandingContext";
import type { RailPlacePlan, SandingPlan, SandZonePlan } from "./SandingPlan";

type Inputs = Working<SandingContext>["inputs"];

const zoneInputs = (list: (zone: SandZonePlan, sanding: SandingPlan) => readonly WorkingInput[]): Inputs =>
  fromSanding((sanding, [id]) => {
    const zone = sanding.zones.find((candidate) => candidate.id === id);
    return zone === undefined ? [] : list(zone, sanding);
  });

const placeInputs = (list: (place: RailPlacePlan) => readonly WorkingInput[]): Inputs =>
  fromSanding((sanding, [id]) => {
    const place = sanding.places.find((candidate) => candidate.id === id);
    return place === undefined ? [] : list(place);
  });

const film = (name: string, valueM: number): WorkingInput => ({ name, value: length(valueM, "fine") });
const filmAndTaken = ({ filmM, takenM }: Pick<SandZonePlan, "filmM" | "takenM">): WorkingInput[] => [
  film("film", filmM),
  film("taken", takenM),
];
const papers = ({ ledger }: SandZonePlan): WorkingInput[] =>
  ledger.map(({ grit, takenM }) => film(grit, takenM));

const RADIUS = "R = (h²/4 + w²) / 2w, chord h of deck and bottom a few millimetres w in from the edge";
const TAKEN =
  "Σ removed × (1 + lean × bearing), times what weighed dust says over the model; bearing = a / √(2 R δ), at least 1";

/** How each number of the film budget comes about, keyed by its path in the plan. */
export const sandingWorking: WorkingTable<SandingContext> = {
  ...ladderWorking,
  ...bandWorking<SandingContext>("sanding.zones[].film", "M", {
    words: "fill and gloss film before any paper, as planned, as the scale tells, or as gauged",
    formula:
      "fill of the lay-up's zone + gloss; on a rail × (R / R at half length)^0.25 at its sharpest place; gauged: reading + what the papers before it took",
    sources: ["mass-balance", "common-practice"],
    inputs: fromSanding((_sanding, [id], { plan }) => {
      const zone = plan.layup?.zones.find((candidate) => candidate.id === id);
      return zone === undefined
        ? []
        : [film("fill", zone.fillThicknessM), film("gloss", zone.glossThicknessM)];
    }),
  }),
  ...bandWorking<SandingContext>("sanding.zones[].taken", "M", {
    words: "what all papers take here, more where the hand leans, most on a sharp edge",
    formula: TAKEN,
    sources: ["convention", "metal-roughness-chart"],
    inputs: zoneInputs(papers),
  }),
  ...bandWorking<SandingContext>("sanding.zones[].remaining", "M", {
    words: "film that is left at the end; below nought the glass is cut",
    formula: "film − taken",
    sources: ["mass-balance"],
    inputs: zoneInputs(filmAndTaken),
  }),
  ...bandWorking<SandingContext>("sanding.zones[].least", "M", {
    words: "the thinnest that the film gets on the way: before the gloss coat, or at the end",
    formula: "least of fill − taken before the gloss coat, and film − taken",
    sources: ["mass-balance"],
    inputs: zoneInputs((zone) => [...filmAndTaken(zone), film("left", zone.remainingM)]),
  }),
  "sanding.zones[].fromTailM": {
    words: "where the rail is sharpest, straight from the tail",
    formula: "place of the least R",
    sources: ["convention"],
    inputs: zoneInputs(() => []),
  },
  "sanding.zones[].radiusM": {
    words: "how round the edge is: a circle through its outermost point",
    formula: RADIUS,
    sources: ["geometry", "convention"],
    inputs: zoneInputs(() => []),
  },
  "sanding.zones[].throughShare": {
    words: "in how many such boards the film is gone here, by its band",
    formula: "Φ(−least / ((least − low end) / 1.645))",
    sources: ["student-t", "convention"],
    inputs: zoneInputs((zone) => [film("least", zone.leastM), film("low end", zone.leastLowM)]),
  },
  "sanding.zones[].rank": {
    words: "place in the row, the one that goes through first in front",
    formula: "order of chance, then of the least film",
    sources: ["convention"],
    inputs: zoneInputs((zone, { zones }) => [
      { name: "chance", value: fraction(zone.throughShare) },
      { name: "zones", value: count(zones.length) },
    ]),
  },
  "sanding.zones[].ledger[].takenM": {
    words: "what this paper takes here",
    formula: "removed × (1 + lean × bearing)",
    sources: ["convention", "metal-roughness-chart"],
    inputs: zoneInputs(() => [{ name: "scratch over grain", value: fraction(SCRATCH_SHARE.value) }]),
  },
  "sanding.zones[].ledger[].leftM": {
    words: "film left after this paper; a gloss coat comes on top before its first",
    formula: "film − Σ taken so far",
    sources: ["mass-balance"],
    inputs: zoneInputs((zone) => [film("film", zone.filmM), ...papers(zone)]),
  },
  "sanding.places[].fromTailM": {
    words: "straight from the tail, evenly along the board",
    formula: "i × length / 20",
    sources: ["convention"],
    inputs: placeInputs(() => []),
  },
  "sanding.places[].radiusM": {
    words: "how round the rail is here",
    formula: RADIUS,
    sources: ["geometry", "convention"],
    inputs: placeInputs(() => []),
  },
  "sanding.places[].filmM": {
    words:
      "film on the rail here: less than at half length where the edge is sharper, because more drains off it",
    formula: "film of that rail × (R / R at half length)^0.25, no more than on the flat",
    sources: ["convention"],
    inputs: placeInputs((place) => [film("radius R", place.radiusM)]),
  },
  "sanding.places[].takenM": {
    words: "what all papers take here",
    formula: TAKEN,
    sources: ["convention", "metal-roughness-chart"],
    inputs: placeInputs((place) => [film("radius R", place.radiusM)]),
  },
  "sanding.places[].remainingM": {
    words: "film that is left here at the end",
    formula: "film − taken",
    sources: ["mass-balance"],
    inputs: placeInputs(filmAndTaken),
  },
  "sanding.worst.fromTailM": {
    words: "where along the rails the least film is left",
    formula: "place of the least of film − taken",
    sources: ["convention"],
    inputs: worstInputs(),
  },
  "sanding.worst.remainingM": {
    words: "the least film along the rails",
    formula: "least of film − taken",
    sources: ["mass-balance"],
    inputs: worstInputs(),
  },
};

function worstInputs(): Inputs {
  return fromSanding(({ places, worst }) =>
    places.filter(({ id }) => id === worst?.place).flatMap(filmAndTaken),
  );
}
