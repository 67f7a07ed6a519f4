import { BAND_SDS, GAUGE_SPREAD_M, THIN_FROM_SHARE, THROUGH_FROM_SHARE } from "../constants/sandingModel";
import { SHOP_DEFAULTS } from "../constants/shopDefaults";
import { say } from "../foundation/phrase";
import { type Assumption, finding, type Stage } from "../foundation/stage";
import { normalShare } from "../geometry/normalShare";
import type { Band } from "../layup/computeBand";
import type { Face, LayupPlan } from "../layup/LayupPlan";
import { findResin } from "../materials/listResins";
import type { BoardShape } from "../shape/BoardShape";
import { assume } from "../sources/assume";
import { checkSanding } from "./checkSanding";
import { AS_MODELLED, computeDustRatio } from "./computeDustRatio";
import { computeLedger, computeSpot, type Spot } from "./computeSpot";
import type { LadderPlan } from "./LadderPlan";
import { listRailPlaces } from "./listRailPlaces";
import { listRungs, type Rung } from "./listRungs";
import { listZoneSpots, type ZoneSpot } from "./listZoneSpots";
import { readSandingRecord, type SandingReadings } from "./readSandingRecord";
import type { SandingBoard } from "./SandingBoard";
import type { RailPlacePlan, SandingPlan, SandRisk, SandZonePlan, WorstPlan } from "./SandingPlan";

interface Basis {
  readonly shape: BoardShape | null;
  /** Its films as weighed where a fill coat was. */
  readonly layup: LayupPlan | null;
  readonly ladder: LadderPlan | null;
  /** Zones whose film the scale tells. */
  readonly weighed: readonly string[];
}

interface Bench {
  readonly board: SandingBoard;
  readonly rungs: readonly Rung[];
  readonly readings: SandingReadings;
  readonly weighed: readonly string[];
  readonly ratio: Readonly<Record<Face, Band>>;
}

/**
 * The film as a budget: what lies at each place, what the papers take there, what is left, and where the hand goes through first.
 * Method: the ledger of `computeLedger`; a gauge or weighed dust of the record replaces the model.
 * @returns null without finding where shape or glass is not planned
 */
export function buildSanding(board: SandingBoard, basis: Basis): Stage<SandingPlan> {
  const { shape, layup, ladder, weighed } = basis;
  if (shape === null || layup === null || ladder === null) {
    return { value: null, findings: [finding("note", "sanding.waits", "sanding", WAITS)], assumptions: [] };
  }
  const rails = listRailPlaces(layup, shape);
  const spots = listZoneSpots(board, layup, shape, rails);
  const rungs = listRungs(board.glass);
  const { readings, findings } = readSandingRecord(board, {
    zones: spots.map(({ zone }) => zone.id),
    grits: rungs.map(({ grit }) => grit),
  });
  const bench: Bench = { board, rungs, readings, weighed, ratio: readRatios(board, layup, ladder, readings) };
  const zones = rankZones(spots.map((spot) => buildZone(bench, spot)));
  const places = buildPlaces(bench, spots, rails);
  const value: SandingPlan = { zones, ...ladder, places, worst: findWorst(places) };
  return { value, findings: [...findings, ...checkSanding(value)], assumptions: listTaken(board) };
}

const WAITS = say`the film budget waits for the shape, the glass and its papers`;

function readRatios(
  board: SandingBoard,
  layup: LayupPlan,
  ladder: LadderPlan,
  { dust }: SandingReadings,
): Readonly<Record<Face, Band>> {
  const ratioOf = (face: Face): Band => {
    const coat = layup.coats.find(({ id }) => id === `fill-${face}`);
    const resin = findResin(board.materials, coat?.resin);
    if (coat === undefined || resin === undefined) return AS_MODELLED;
    return computeDustRatio(
      dust.find((entry) => entry.face === face),
      {
        rungs: listRungs(board.glass),
        removesM: ladder.grits.map(({ removesM }) => removesM),
        areaM2: coat.areaM2,
        densityKgM3: resin.curedDensityKgM3.value,
        experience: experienceOf(board),
      },
    );
  };
  return { deck: ratioOf("deck"), bottom: ratioOf("bottom") };
}

const experienceOf = (board: SandingBoard) => board.shop?.experience ?? SHOP_DEFAULTS.experience;

function spotOf(bench: Bench, { zone, face, byHand, isFlange, radiusM, filmShare }: ZoneSpot): Spot {
  const planned: Band = {
    value: filmShare * zone.fillThicknessM,
    low: filmShare * zone.fillThicknessLowM,
    high: filmShare * zone.fillThicknessHighM,
  };
  const spot: Spot = {
    fill: planned,
    glossM: zone.glossThicknessM,
    radiusM,
    byHand,
    isFlange,
    experience: experienceOf(bench.board),
    ratio: bench.ratio[face],
  };
  return { ...spot, fill: gaugedFill(bench, zone.id, spot) ?? planned };
}

/** The film before any paper, by a gauge: what it reads, and what the papers that went before it took. */
function gaugedFill({ readings, rungs }: Bench, zone: string, spot: Spot): Band | null {
  const reading = readings.films.find((entry) => entry.zone === zone);
  if (reading === undefined) return null;
  const ledger = computeLedger(spot, rungs);
  const last = ledger.findIndex(({ grit }) => grit === reading.after);
  const before = ledger.slice(0, last + 1);
  const takenM = before.reduce((sumM, line) => sumM + line.takenM, 0);
  const isOnGloss = before.some(({ grit }) =>
    rungs.some((rung) => rung.grit === grit && rung.on === "gloss"),
  );
  const filmM = reading.filmM + takenM - (isOnGloss ? spot.glossM : 0);
  return {
    value: filmM,
    low: Math.max(filmM - GAUGE_SPREAD_M.value, 0),
    high: filmM + GAUGE_SPREAD_M.value,
  };
}

function buildZone(bench: Bench, zoneSpot: ZoneSpot): Omit<SandZonePlan, "rank"> {
  const { zone } = zoneSpot;
  const spot = spotOf(bench, zoneSpot);
  const { taken, remaining, least } = computeSpot(spot, bench.rungs);
  const throughShare = computeThroughShare(least);
  return {
    id: zone.id,
    fromTailM: zoneSpot.fromTailM,
    filmM: spot.fill.value + spot.glossM,
    filmLowM: spot.fill.low + spot.glossM,
    filmHighM: spot.fill.high + spot.glossM,
    filmBy: filmBy(bench, zone.id),
    takenM: taken.value,
    takenLowM: taken.low,
    takenHighM: taken.high,
    remainingM: remaining.value,
    remainingLowM: remaining.low,
    remainingHighM: remaining.high,
    leastM: least.value,
    leastLowM: least.low,
    leastHighM: least.high,
    radiusM: zoneSpot.radiusM,
    throughShare,
    risk: riskOf(throughShare),
    ledger: computeLedger(spot, bench.rungs),
  };
}

function filmBy({ readings, weighed }: Bench, id: string): SandZonePlan["filmBy"] {
  if (readings.films.some(({ zone }) => zone === id)) return "gauge";
  return weighed.includes(id) ? "weigh-in" : "plan";
}

/** How often the film is gone, were it spread normally about its value as wide as its lower band. */
function computeThroughShare({ value, low }: Band): number {
  const sdM = (value - low) / BAND_SDS.value;
  if (!(sdM > 0)) return value > 0 ? 0 : 1;
  return normalShare(-value / sdM);
}

function riskOf(throughShare: number): SandRisk {
  if (throughShare >= THROUGH_FROM_SHARE.value) return "through";
  return throughShare >= THIN_FROM_SHARE.value ? "thin" : "enough";
}

function rankZones(zones: ReadonlyArray<Omit<SandZonePlan, "rank">>): readonly SandZonePlan[] {
  const order = zones.toSorted((a, b) => b.throughShare - a.throughShare || a.leastM - b.leastM);
  return zones.map((zone) => ({ ...zone, rank: order.indexOf(zone) + 1 }));
}

function buildPlaces(
  bench: Bench,
  spots: readonly ZoneSpot[],
  rails: ReturnType<typeof listRailPlaces>,
): readonly RailPlacePlan[] {
  const ofRail = new Map(
    spots
      .filter(({ zone }) => zone.id.startsWith("rail-"))
      .map((spot) => [spot.zone.id, { ...spotOf(bench, spot), filmShare: spot.filmShare }]),
  );
  return rails.flatMap(({ id, side, fromTailM, radiusM, filmShare }) => {
    const rail = ofRail.get(`rail-${side}`);
    if (rail === undefined) return [];
    const fillM = (rail.fill.value / rail.filmShare) * filmShare;
    const spot: Spot = { ...rail, radiusM, fill: { value: fillM, low: fillM, high: fillM } };
    const ledger = computeLedger(spot, bench.rungs);
    const filmM = fillM + spot.glossM;
    const takenM = ledger.reduce((sumM, line) => sumM + line.takenM, 0);
    return [{ id, side, fromTailM, radiusM, filmM, takenM, remainingM: filmM - takenM }];
  });
}

function findWorst(places: readonly RailPlacePlan[]): WorstPlan | null {
  if (places.length === 0) return null;
  const { id, side, fromTailM, remainingM } = places.reduce((worst, place) =>
    place.remainingM < worst.remainingM ? place : worst,
  );
  return { place: id, side, fromTailM, remainingM };
}

function listTaken(board: SandingBoard): readonly Assumption[] {
  const model = assume(
    "sanding",
    say`each paper takes off as much as the scratches of the one before are deep, a tenth of the grain`,
    "for resin no table was found; a film gauge or weighed dust replaces it",
    "metal-roughness-chart",
  );
  const rails = assume(
    "sanding",
    say`the coarsest paper stays off rails, laps and ends, which are sanded by hand with soft pads`,
    "the film is thinnest there",
    "common-practice",
  );
  const level =
    board.blank?.stringer !== undefined && board.blank.stringer.proudM === undefined
      ? [
          assume(
            "blank.stringer.proud",
            say`a stringer level with the foam`,
            "how far it stands up was not given; a proud stringer is sanded through first",
            "common-practice",
          ),
        ]
      : [];
  return [model, rails, ...level];
}
