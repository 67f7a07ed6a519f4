import type { Resin } from "../constants/Resin";
import { type Phrase, say } from "../foundation/phrase";
import { density, duration, fraction, temperature } from "../foundation/quantity";
import type { Assumption } from "../foundation/stage";
import type { MaterialsInput } from "../materials/MaterialsInput";
import { assume } from "../sources/assume";
import type { SourceId } from "../sources/sources";
import type { ResinCure } from "./ResinCure";

const WHY =
  "the resin's record leaves it out, so the generic resin of its kind gives it: read it off your own sheet";

interface Taken {
  readonly field: string;
  readonly value: Phrase;
  readonly source: SourceId;
}

/** One assumption for each field that a resin of the builder's own leaves to the generic resin of its kind. */
export function listOwnResins(
  materials: MaterialsInput | undefined,
  cures: ReadonlyMap<string, ResinCure>,
): Assumption[] {
  const own = materials?.resins ?? {};
  return [...cures].flatMap(([id, { resin }]) =>
    Object.hasOwn(own, id)
      ? listTaken(resin, new Set(Object.keys(own[id]!))).map(({ field, value, source }) =>
          assume(`materials.resins.${id}.${field}`, value, WHY, source),
        )
      : [],
  );
}

function listTaken(resin: Resin, given: ReadonlySet<string>): Taken[] {
  const { liquidDensityKgM3, curedDensityKgM3, leastCureTemperatureK, recoatUntil } = resin;
  const taken: Array<Taken & { readonly key: string }> = [
    {
      key: "liquidDensityKgM3",
      field: "liquidDensity",
      value: say`${density(liquidDensityKgM3.value)}`,
      source: liquidDensityKgM3.source,
    },
    {
      key: "curedDensityKgM3",
      field: "curedDensity",
      value: say`${density(curedDensityKgM3.value)}`,
      source: curedDensityKgM3.source,
    },
    {
      key: "recoatUntil",
      field: "recoat",
      value: say`bonds without sanding for ${duration(recoatUntil.durationS.value)} at ${temperature(recoatUntil.temperatureK)}`,
      source: recoatUntil.durationS.source,
    },
    {
      key: "leastCureTemperatureK",
      field: "leastTemperature",
      value: say`${temperature(leastCureTemperatureK.value)}`,
      source: leastCureTemperatureK.source,
    },
  ];
  if (resin.kind !== "sunlight") {
    const { value, source } = resin.hardenerDensityKgM3;
    taken.push({
      key: "hardenerDensityKgM3",
      field: "hardenerDensity",
      value: say`${density(value)}`,
      source,
    });
  }
  if (resin.kind === "two-part")
    taken.push({
      key: "blushes",
      field: "blushes",
      value: resin.blushes ? say`it blushes in damp or cold air` : say`it does not blush`,
      source: "epoxy-memory",
    });
  if (resin.kind === "sunlight") {
    const { uvIndex, durationS } = resin.exposure;
    const value = say`sets in ${duration(durationS.value)} in the sun of UV index ${uvIndex}`;
    taken.push({ key: "exposure", field: "exposure", value, source: durationS.source });
  }
  if (resin.kind === "peroxide")
    taken.push({
      key: "promoter",
      field: "promoter",
      value: say`promoter in the resin`,
      source: "convention",
    });
  if (resin.kind !== "two-part") {
    const { value, source } = resin.styreneShare;
    taken.push({ key: "styreneShare", field: "styrene", value: say`${fraction(value)}`, source });
    const wax = resin.waxVolumeShare;
    if (wax !== null)
      taken.push({
        key: "waxVolumeShare",
        field: "wax",
        value: say`${fraction(wax.value)}`,
        source: wax.source,
      });
  }
  return taken.filter(({ key }) => !given.has(key));
}
