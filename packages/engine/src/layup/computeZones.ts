import type { Cloth } from "../constants/cloths";
import { FILM_SHARE_BY_PLACE } from "../constants/coatFilms";
import { BACK_FOOT_SHARE } from "../constants/zones";
import { type Band, computeBand } from "./computeBand";
import { computeClothThickness, computeFilm, type FilmCoat, listFilmDrivers } from "./computeFilm";
import { computePatchSize } from "./computePatchSize";
import type { Face, ZonePlan } from "./LayupPlan";
import { computeFilmThickness } from "./mixture";
import type { Schedule } from "./Schedule";
import type { Skin } from "./Skin";
import type { Socket } from "./Socket";

/** One spot of the board that stands for a zone. */
interface Spot {
  readonly id: string;
  readonly face: Face;
  readonly atTapeM: number | null;
  readonly place: keyof typeof FILM_SHARE_BY_PLACE;
}

/**
 * Skin and film in each zone. A zone stands for one spot: the middle of a face, under the back foot, the rail's widest line (reckoned
 * just above it, where the other face's laps lie too), the strip of a lap, the ends, each box. A patch counts where it covers
 * the spot and, on the middle of a face, where it is at least half as wide as the face.
 */
export function computeZones(schedule: Schedule, skin: Skin, sockets: readonly Socket[]): ZonePlan[] {
  const films = new Map<string, Band>();
  const filmOn = (spot: Spot, coat: FilmCoat): Band => {
    const key = `${coat} ${spot.face} ${spot.place}`;
    const film = films.get(key) ?? computeFilmOn(schedule, spot, coat);
    films.set(key, film);
    return film;
  };
  return listSpots(skin, sockets).map((spot) => computeZone({ schedule, skin, filmOn }, spot));
}

function listSpots(skin: Skin, sockets: readonly Socket[]): Spot[] {
  const halfM = skin.lengthTapeM / 2;
  const boxes = sockets.filter((socket) => socket.kind === "box");
  return [
    { id: "deck", face: "deck", atTapeM: halfM, place: "flat" },
    { id: "deck-foot", face: "deck", atTapeM: BACK_FOOT_SHARE.value * skin.lengthTapeM, place: "flat" },
    { id: "bottom", face: "bottom", atTapeM: halfM, place: "flat" },
    { id: "rail-left", face: "deck", atTapeM: halfM, place: "edge" },
    { id: "rail-right", face: "deck", atTapeM: halfM, place: "edge" },
    { id: "lap-deck", face: "deck", atTapeM: halfM, place: "lap" },
    { id: "lap-bottom", face: "bottom", atTapeM: halfM, place: "lap" },
    { id: "tail", face: "deck", atTapeM: 0, place: "edge" },
    { id: "nose", face: "deck", atTapeM: skin.lengthTapeM, place: "edge" },
    ...boxes.map(
      (box, i): Spot => ({ id: `box-${i + 1}`, face: "bottom", atTapeM: box.fromTailTapeM, place: "flat" }),
    ),
  ];
}

function computeZone(
  of: {
    readonly schedule: Schedule;
    readonly skin: Skin;
    readonly filmOn: (spot: Spot, coat: FilmCoat) => Band;
  },
  spot: Spot,
): ZonePlan {
  const { schedule, skin } = of;
  const cloths = listCloths(schedule, skin, spot);
  const laminateResin = schedule.resins.laminate.resin;
  const thicknessM = computeBand({ ratio: schedule.ratio }, ({ ratio }) =>
    cloths.reduce((sumM, cloth) => sumM + computeClothThickness(cloth, laminateResin, ratio), 0),
  );
  const fibreM = cloths.reduce(
    (sumM, cloth) => sumM + cloth.arealMassKgM2.value / cloth.fibre.densityKgM3.value,
    0,
  );
  const fill = of.filmOn(spot, "fill");
  return {
    id: spot.id,
    glassArealMassKgM2: cloths.reduce((sumKgM2, cloth) => sumKgM2 + cloth.arealMassKgM2.value, 0),
    laminateThicknessM: thicknessM.value,
    laminateThicknessLowM: thicknessM.low,
    laminateThicknessHighM: thicknessM.high,
    skinArealMassKgM2:
      (1 + schedule.ratio.value) * cloths.reduce((sumKgM2, cloth) => sumKgM2 + cloth.arealMassKgM2.value, 0),
    fibreVolumeFraction: thicknessM.value > 0 ? fibreM / thicknessM.value : 0,
    fillThicknessM: fill.value,
    fillThicknessLowM: fill.low,
    fillThicknessHighM: fill.high,
    glossThicknessM: schedule.finish === "gloss" ? of.filmOn(spot, "gloss").value : 0,
  };
}

function listCloths(schedule: Schedule, skin: Skin, spot: Spot): Cloth[] {
  const other = schedule.faces[spot.face === "deck" ? "bottom" : "deck"];
  const lapping = spot.place === "flat" ? [] : other.layers.filter((_, i) => other.lapsM[i]! > 0);
  const patches = schedule.patches.filter((patch) => patch.face === spot.face && covers(skin, spot, patch));
  return [...lapping, ...schedule.faces[spot.face].layers, ...patches.map((patch) => patch.cloth)];
}

function covers(skin: Skin, spot: Spot, patch: Schedule["patches"][number]): boolean {
  const { atTapeM } = spot;
  if (atTapeM === null || patch.fromTailTapeM > atTapeM || patch.toTapeM < atTapeM) return false;
  if (patch.widthM === undefined) return true;
  if (spot.place !== "flat") return false;
  const { face, fromTailTapeM, toTapeM } = patch;
  return patch.widthM >= computePatchSize(skin, { face, fromTailTapeM, toTapeM }).widthM / 2;
}

function computeFilmOn(schedule: Schedule, spot: Spot, coat: FilmCoat): Band {
  const densityKgM3 = schedule.resins[coat].resin.curedDensityKgM3.value;
  const drivers = { ...listFilmDrivers(schedule, coat), placeShare: FILM_SHARE_BY_PLACE[spot.place] };
  return computeBand(drivers, (values) => {
    const { netKgM2 } = computeFilm(schedule, { face: spot.face, coat }, values);
    return computeFilmThickness(values.placeShare * netKgM2, densityKgM3);
  });
}
