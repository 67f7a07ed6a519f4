import type { FILM_SHARE_BY_PLACE } from "../constants/coatFilms";
import type { Face } from "./LayupPlan";

const BOTTOM_ZONES = /^(?:bottom|lap-bottom|box-\d+)$/;
const EDGE_ZONES = /^(?:rail-left|rail-right|tail|nose)$/;

/** Which face's coat makes a zone's film, and how it runs there. */
export function spotOfZone(id: string): {
  readonly face: Face;
  readonly place: keyof typeof FILM_SHARE_BY_PLACE;
} {
  return {
    face: BOTTOM_ZONES.test(id) ? "bottom" : "deck",
    place: EDGE_ZONES.test(id) ? "edge" : id.startsWith("lap-") ? "lap" : "flat",
  };
}
