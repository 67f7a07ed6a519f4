import type { WorkingTable } from "../foundation/stage";
import { asSetWorking } from "./working/asSetWorking";
import { boxWorking } from "./working/boxWorking";
import type { FinsetContext } from "./working/FinsetContext";
import { markWorking } from "./working/markWorking";
import { pairWorking } from "./working/pairWorking";
import { worthWorking } from "./working/worthWorking";

/** How every number of the plan's `finset` comes about. */
export const finsetWorking: WorkingTable<FinsetContext> = {
  ...markWorking,
  ...worthWorking,
  ...boxWorking,
  ...pairWorking,
  ...asSetWorking,
};
