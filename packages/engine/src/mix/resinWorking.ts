import { EXPOSURE_POWER } from "../constants/sunlight";
import { say } from "../foundation/phrase";
import { count, duration, fraction, temperature } from "../foundation/quantity";
import type { WorkingInput, WorkingTable } from "../foundation/stage";
import { findResin } from "../materials/listResins";
import { bandedWorking } from "./bandedWorking";
import type { MixContext } from "./MixContext";

const RESIN = "mix.resins[]";

function points(context: MixContext, id: string | undefined): WorkingInput[] {
  const found = context.plan.mix?.resins.find((resin) => resin.id === id);
  return [{ name: "lines of the gel table", value: String(found?.points.length ?? 0) }];
}

function exposure({ board }: MixContext, id: string | undefined): WorkingInput[] {
  const resin = findResin(board.materials, id);
  if (resin?.kind !== "sunlight") return [];
  return [
    { name: "sheet's time", value: duration(resin.exposure.durationS.value) },
    { name: "at a UV index of", value: count(resin.exposure.uvIndex) },
    {
      name: "power p",
      value: say`${EXPOSURE_POWER.value} (${EXPOSURE_POWER.low} to ${EXPOSURE_POWER.high})`,
    },
  ];
}

const point = (words: string, show: (at: { temperatureK: number; doseRatio: number }) => WorkingInput[]) => ({
  words,
  formula: "as the sheet or the builder's own cup gives it",
  sources: ["own-sheet", "gel-table-115nt"] as const,
  inputs: ({ plan }: MixContext, [id, place]: readonly string[]) => {
    const at = plan.mix?.resins.find((resin) => resin.id === id)?.points[Number(place)];
    return at === undefined ? [] : show(at);
  },
});

/** How what a resin's times rest on comes about. */
export const resinWorking: WorkingTable<MixContext> = {
  [`${RESIN}.exponent`]: {
    words: "how much a stronger dose quickens the gel; nought where the ratio is fixed",
    formula:
      "n of t = t_ref (c/c_ref)^−n exp[(E/R)(1/T − 1/T_ref)], least squares in ln(t); the kind's own where the points do not settle it",
    sources: ["arrhenius", "gel-tables-two-sheets"],
    inputs: (context, [id]) => points(context, id),
  },
  [`${RESIN}.activationEnergyJMol`]: {
    words: "how much each kelvin quickens gel and cure, J/mol",
    formula:
      "E of t = t_ref (c/c_ref)^−n exp[(E/R)(1/T − 1/T_ref)], least squares in ln(t); the kind's own where the points do not settle it",
    sources: ["arrhenius", "redox-cure-energy", "epoxy-halving", "codata-2018"],
    inputs: (context, [id]) => points(context, id),
  },
  [`${RESIN}.points[].temperatureK`]: point("a gel point's temperature", (at) => [
    { name: "dose", value: fraction(at.doseRatio) },
  ]),
  [`${RESIN}.points[].doseRatio`]: point("a gel point's dose, hardener over base by mass", (at) => [
    { name: "temperature", value: temperature(at.temperatureK) },
  ]),
  [`${RESIN}.points[].gelS`]: point("a gel point's time", (at) => [
    { name: "temperature", value: temperature(at.temperatureK) },
    { name: "dose", value: fraction(at.doseRatio) },
  ]),
  [`${RESIN}.points[].fittedS`]: {
    words: "what the fit gives at this point",
    formula: "t_ref (c/c_ref)^−n exp[(E/R)(1/T − 1/T_ref)]",
    sources: ["arrhenius"],
    inputs: (context, [id]) => points(context, id),
  },
  [`${RESIN}.exposures[].uvIndex`]: {
    words: "a UV index as a forecast gives it",
    formula: "dull day 1, spring noon 3, summer noon 6, strong sun 9",
    sources: ["convention"],
    inputs: (context, [id]) => exposure(context, id),
  },
  ...bandedWorking(`${RESIN}.exposures[].exposure`, "S", {
    words: "how long a laminate lies in such a sun until it is hard: the same dose of light",
    formula: "t = t_sheet (UV_sheet / UV)^p",
    sources: ["sunlight-memory", "own-sheet"],
    inputs: (context, [id]) => exposure(context, id),
  }),
};
