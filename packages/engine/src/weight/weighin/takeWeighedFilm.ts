import type { Stage } from "../../foundation/stage";
import type { LayupPlan } from "../../layup/LayupPlan";
import type { WeighinsPlan } from "./WeighinsPlan";

/** The lay-up with the fill films that the scale tells in place of the planned ones, for what sands them. */
export function takeWeighedFilm(layup: Stage<LayupPlan>, weighins: WeighinsPlan | null): Stage<LayupPlan> {
  if (layup.value === null || weighins === null || weighins.zones.length === 0) return layup;
  const zones = layup.value.zones.map((zone) => {
    const weighed = weighins.zones.find(({ id }) => id === zone.id);
    if (weighed === undefined) return zone;
    const { fillThicknessM, fillThicknessLowM, fillThicknessHighM } = weighed;
    return { ...zone, fillThicknessM, fillThicknessLowM, fillThicknessHighM };
  });
  return { ...layup, value: { ...layup.value, zones } };
}
