import { FILM_SHARE_BY_PLACE, WEAVE_OPEN_SHARE } from "../constants/coatFilms";
import { arealMass, count, density, fraction, length } from "../foundation/quantity";
import type { WorkingInput, WorkingTable } from "../foundation/stage";
import { findResin } from "../materials/listResins";
import { bandWorking } from "./bandWorking";
import { byId, fromLayup, type LayupContext } from "./LayupContext";
import type { LayupPlan, ZonePlan } from "./LayupPlan";
import { spotOfZone } from "./spotOfZone";

/** How the skin and the film of a zone come about. */
export const zonesWorking: WorkingTable<LayupContext> = {
  "layup.zones[].glassArealMassKgM2": {
    words:
      "glass over one square metre here: the face's layers, laps of the other face where they lie, patches that cover the spot",
    formula: "Σ areal mass",
    sources: ["mass-balance", "nist-811"],
    inputs: zoneInputs((zone, layup) => [
      { name: "pieces of the board", value: count(layup.pieces.length) },
      { name: "glass here", value: arealMass(zone.glassArealMassKgM2) },
    ]),
  },
  "layup.zones[].skinArealMassKgM2": {
    words: "skin over one square metre here, cured: glass and the resin it holds, the poured coats left out",
    formula: "Σ areal mass × (1 + r)",
    sources: ["mass-balance", "resin-glass-chart"],
    inputs: zoneInputs((zone, layup) => [
      { name: "glass here", value: arealMass(zone.glassArealMassKgM2) },
      { name: "ratio r", value: count(layup.resinRatio) },
    ]),
  },
  ...bandWorking<LayupContext>("layup.zones[].laminateThickness", "M", {
    words: "thickness of the cured laminate without voids; resin soaked into the foam lies beneath it",
    formula: "t = Σ A (1/ρf + r/ρm)",
    sources: ["kaw-mixture", "e-glass-sheet", "resin-glass-chart"],
    inputs: zoneInputs((zone, layup, context) => [
      { name: "glass here A", value: arealMass(zone.glassArealMassKgM2) },
      { name: "ratio r", value: count(layup.resinRatio) },
      ...resinDensity(layup, "laminate", context),
    ]),
  }),
  "layup.zones[].fibreVolumeFraction": {
    words: "share of the laminate's volume that is glass",
    formula: "Vf = Σ (A/ρf) / t",
    sources: ["kaw-mixture"],
    inputs: zoneInputs((zone) => [
      { name: "glass here A", value: arealMass(zone.glassArealMassKgM2) },
      { name: "laminate t", value: length(zone.laminateThicknessM, "fine") },
    ]),
  },
  ...bandWorking<LayupContext>("layup.zones[].fillThickness", "M", {
    words: "film of the fill coat before sanding; thinner on laps and rails, where it runs off",
    formula:
      "place share × (poured − run-off − styrene − weave) / cured density; where the face's fill coat was weighed, as in weighins.zones",
    sources: ["common-practice", "mass-balance"],
    inputs: zoneInputs((zone, layup, context) => [
      ...listPlaces(),
      { name: "open share of the weave", value: fraction(WEAVE_OPEN_SHARE.value) },
      ...netFilm(zone, layup, "fill"),
      ...resinDensity(layup, "fill", context),
    ]),
  }),
  "layup.zones[].glossThicknessM": {
    words: "film of the gloss coat; nought where none is planned",
    formula: "place share × (poured − run-off − styrene) / cured density",
    sources: ["common-practice", "mass-balance"],
    inputs: zoneInputs((zone, layup, context) => [
      ...listPlaces(),
      ...netFilm(zone, layup, "gloss"),
      ...resinDensity(layup, "gloss", context),
    ]),
  },
};

function zoneInputs(
  list: (zone: ZonePlan, layup: LayupPlan, context: LayupContext) => readonly WorkingInput[],
) {
  return fromLayup((layup, [id], context) => byId(layup.zones, id, (zone) => list(zone, layup, context)));
}

function listPlaces(): WorkingInput[] {
  return [
    { name: "place share on laps", value: fraction(FILM_SHARE_BY_PLACE.lap.value) },
    { name: "place share on rails and ends", value: fraction(FILM_SHARE_BY_PLACE.edge.value) },
  ];
}

function netFilm(zone: ZonePlan, layup: LayupPlan, kind: "fill" | "gloss"): WorkingInput[] {
  const { face } = spotOfZone(zone.id);
  const coat = layup.coats.find((candidate) => candidate.kind === kind && candidate.face === face);
  const net = coat?.terms.find((term) => term.id === "net-film");
  if (coat === undefined || net === undefined) return [{ name: "coat", value: "none planned" }];
  return [{ name: "net film on the face", value: arealMass(net.massKg / coat.areaM2) }];
}

function resinDensity(
  layup: LayupPlan,
  kind: "laminate" | "fill" | "gloss",
  { board }: LayupContext,
): WorkingInput[] {
  const coat = layup.coats.find((candidate) => candidate.kind === kind);
  const resin = coat === undefined ? undefined : findResin(board.materials, coat.resin);
  return resin === undefined ? [] : [{ name: "cured resin", value: density(resin.curedDensityKgM3.value) }];
}
