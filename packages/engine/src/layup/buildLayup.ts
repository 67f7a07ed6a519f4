import { POCKET_GAP_M } from "../constants/fittings";
import { say } from "../foundation/phrase";
import { type Assumption, finding, type Stage } from "../foundation/stage";
import { computeBodyVolumeM3 } from "../geometry/bodyVolume";
import { listCloths } from "../materials/listCloths";
import type { BoardShape } from "../shape/BoardShape";
import { assume } from "../sources/assume";
import { buildSchedule } from "./buildSchedule";
import { computeBand } from "./computeBand";
import { computeBoxCoats } from "./computeBoxCoats";
import { computeFilmCoat } from "./computeFilmCoat";
import { computeFinCoat, computeFinPatterns, computeFinPieces } from "./computeFinGlass";
import { computeLaminateCoats } from "./computeLaminateCoats";
import { computePatterns } from "./computePatterns";
import { computePieces } from "./computePieces";
import { computeSealCoat } from "./computeSealCoat";
import { computeSkin } from "./computeSkin";
import { computeZones } from "./computeZones";
import type { LayupInput } from "./LayupInput";
import {
  type CoatPlan,
  FACES,
  type FacePlan,
  type FittingPlan,
  type LayupPlan,
  type PiecePlan,
} from "./LayupPlan";
import { type GlassedFin, resolveGlassedFins } from "./resolveGlassedFins";
import { resolveSockets } from "./resolveSockets";
import type { Schedule } from "./Schedule";
import type { Skin } from "./Skin";
import type { Socket } from "./Socket";
import { compareSchedules } from "./stiffness/compareSchedules";

/**
 * Cloth and resin for the board: every piece with its area and mass, every coat with what its resin is made of, and the thickness of
 * skin and film in each zone. Method: the shape's own surface, girths and rail line; rule of mixtures; terms of each coat as
 * common practice gives them, with bands.
 * @returns null with a blocker where shape, foam, resin or cloth is missing or impossible; null with a note where the board
 *   file has no glass part
 */
export function buildLayup(board: LayupInput, shape: BoardShape | null): Stage<LayupPlan> {
  const { glass, blank, fins, materials } = board;
  if (glass === undefined) {
    const says = say`add a glass part to the board file (resin, and layers for bottom and deck) to get cloth, resin and weight`;
    return { value: null, findings: [finding("note", "layup.no-glass", "glass", says)], assumptions: [] };
  }
  const patched = (glass.patches ?? []).map((patch) => patch.face);
  const skin = shape === null ? null : computeSkin(shape, patched);
  const schedule = buildSchedule({ ...board, glass }, skin);
  if (shape === null || skin === null) {
    const says = say`the glass waits for the shape: cloth and resin are reckoned from its surface`;
    const waiting = finding("blocker", "layup.no-shape", "survey", says);
    return { value: null, findings: [...schedule.findings, waiting], assumptions: schedule.assumptions };
  }
  const sockets = resolveSockets(fins, shape);
  const glassed = schedule.value === null ? NO_FINS : resolveGlassedFins(fins, schedule.value.faces);
  const stages = [schedule, sockets, glassed];
  const findings = stages.flatMap((stage) => stage.findings);
  const assumptions = stages.flatMap((stage) => stage.assumptions);
  if (schedule.value === null || sockets.value === null || glassed.value === null) {
    return { value: null, findings, assumptions };
  }
  return {
    value: {
      ...composePlan(schedule.value, skin, { sockets: sockets.value, glassed: glassed.value }),
      compared: compareSchedules(
        schedule.value,
        { shape, skin, stringerM: blank?.stringer?.thicknessM ?? 0 },
        listCloths(materials),
      ),
    },
    findings,
    assumptions: [...assumptions, ...listLimits(schedule.value)],
  };
}

const NO_FINS: Stage<readonly GlassedFin[]> = { value: [], findings: [], assumptions: [] };

interface Fittings {
  readonly sockets: readonly Socket[];
  readonly glassed: readonly GlassedFin[];
}

function composePlan(schedule: Schedule, skin: Skin, fittings: Fittings): Omit<LayupPlan, "compared"> {
  const { sockets, glassed } = fittings;
  const patterns = computePatterns(schedule, skin);
  const pieces = [...computePieces(schedule, skin, patterns), ...computeFinPieces(schedule, glassed)];
  return {
    faces: FACES.map((face): FacePlan => {
      const { areaM2, arcM, girthMaxM } = skin.faces[face];
      return { id: face, areaM2, arcM, girthMaxM, lapM: schedule.faces[face].lapM };
    }),
    railLineM: skin.railLineM,
    resinRatio: schedule.ratio.value,
    resinRatioLow: schedule.ratio.low ?? schedule.ratio.value,
    resinRatioHigh: schedule.ratio.high ?? schedule.ratio.value,
    cutting: schedule.cutting,
    pieces,
    patterns: [...patterns.all, ...computeFinPatterns(glassed)],
    coats: composeCoats(schedule, skin, { pieces, ...fittings }),
    zones: computeZones(schedule, skin, sockets),
    fittings: sockets.map(describeFitting),
  };
}

/** In the order of the work where it is always the same; boxes move with their kind, and steps place them. */
function composeCoats(
  schedule: Schedule,
  skin: Skin,
  laid: Fittings & { readonly pieces: readonly PiecePlan[] },
): CoatPlan[] {
  return [
    ...(schedule.isSealed ? FACES.map((face) => computeSealCoat(schedule, skin, face)) : []),
    ...computeLaminateCoats(schedule, skin, laid.pieces),
    ...FACES.map((face) => computeFilmCoat(schedule, skin, { face, coat: "fill" })),
    ...computeFinCoat(schedule, laid.glassed, laid.pieces),
    ...computeBoxCoats(schedule, laid.sockets),
    ...(schedule.finish === "gloss"
      ? FACES.map((face) => computeFilmCoat(schedule, skin, { face, coat: "gloss" }))
      : []),
  ];
}

function describeFitting(socket: Socket): FittingPlan {
  const pocket = computeBand({ gapM: POCKET_GAP_M }, ({ gapM }) => computeBodyVolumeM3(socket.body, gapM));
  return {
    id: socket.id,
    kind: socket.kind,
    bodyVolumeM3: computeBodyVolumeM3(socket.body),
    pocketVolumeM3: pocket.value,
    pocketVolumeLowM3: pocket.low,
    pocketVolumeHighM3: pocket.high,
  };
}

function listLimits(schedule: Schedule): Assumption[] {
  const laps = assume(
    "layup.pieces",
    say`lap strips are lap times the rail's line; notches are not taken off`,
    "the strip overlaps itself by a few per cent at nose and tail, and cloth is counted where it overlaps",
    "geometry",
  );
  const end = assume(
    "layup.faces",
    say`half of the tail's flat end to each face`,
    "the widest line runs about half-way up the end",
    "convention",
  );
  const film = assume(
    "layup.coats",
    say`fill coats poured down to the rail's widest line on each face, wax not counted`,
    "poured mass, run-off, weave and loss are common practice; weigh the board after the coat to know your own",
    "common-practice",
  );
  const rails = assume(
    "layup.zones",
    say`film thinner on laps and rails than on the flat`,
    "a poured coat runs off a curved edge; how far is common practice",
    "common-practice",
  );
  const seal = assume(
    "layup.coats",
    say`filler in the seal coat not counted`,
    "light fillers weigh a few grams a square metre",
    "common-practice",
  );
  return [laps, end, film, rails, ...(schedule.isSealed && schedule.fillers.seal === null ? [seal] : [])];
}
