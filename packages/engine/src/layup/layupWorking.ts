import type { WorkingTable } from "../foundation/stage";
import { coatsWorking } from "./coatsWorking";
import { comparedWorking } from "./comparedWorking";
import { facesWorking } from "./facesWorking";
import { fittingsWorking } from "./fittingsWorking";
import type { LayupContext } from "./LayupContext";
import { patternsWorking } from "./patternsWorking";
import { piecesWorking } from "./piecesWorking";
import { zonesWorking } from "./zonesWorking";

/** How each number of the layup comes about, keyed by its path in the plan. */
export const layupWorking: WorkingTable<LayupContext> = {
  ...facesWorking,
  ...piecesWorking,
  ...patternsWorking,
  ...coatsWorking,
  ...zonesWorking,
  ...fittingsWorking,
  ...comparedWorking,
};
