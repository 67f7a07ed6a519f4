import type { WorkingTable } from "../foundation/stage";
import { asSetWorking } from "./working/asSetWorking";
import { boxWorking } from "./working/boxWorking";
import type { FinsetContext } from "./working/FinsetContext";
import { markWorking } from "./working/markWorking";
import { pairWorking } from "./working/pairWorking";
import { plugWorking } from "./working/plugWorking";
import { settingWorking } from "./working/settingWorking";
import { verifyWorking } from "./working/verifyWorking";
import { worthWorking } from "./working/worthWorking";

/** How every number of the plan's `finset` comes about. */
export const finsetWorking: WorkingTable<FinsetContext> = {
  ...markWorking,
  ...worthWorking,
  ...boxWorking,
  ...pairWorking,
  ...plugWorking,
  ...asSetWorking,
  ...verifyWorking,
  ...settingWorking,
};
