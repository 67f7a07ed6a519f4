import type { WorkingTable } from "../foundation/stage";
import { coatsWorking } from "./coatsWorking";
import { facesWorking } from "./facesWorking";
import { fittingsWorking } from "./fittingsWorking";
import type { LayupContext } from "./LayupContext";
import { piecesWorking } from "./piecesWorking";
import { zonesWorking } from "./zonesWorking";

/** How each number of the layup comes about, keyed by its path in the plan. */
export const layupWorking: WorkingTable<LayupContext> = {
  ...facesWorking,
  ...piecesWorking,
  ...coatsWorking,
  ...zonesWorking,
  ...fittingsWorking,
};
