import type { Working, WorkingTable } from "../foundation/stage";
import { asSetWorking } from "./working/asSetWorking";
import { boxWorking } from "./working/boxWorking";
import type { FinsetContext } from "./working/FinsetContext";
import { listAssumed } from "./working/listAssumed";
import { markWorking } from "./working/markWorking";
import { pairWorking } from "./working/pairWorking";
import { plugWorking } from "./working/plugWorking";
import { settingWorking } from "./working/settingWorking";
import { verifyWorking } from "./working/verifyWorking";
import { worthWorking } from "./working/worthWorking";

const tables: WorkingTable<FinsetContext> = {
  ...markWorking,
  ...worthWorking,
  ...boxWorking,
  ...pairWorking,
  ...plugWorking,
  ...asSetWorking,
  ...verifyWorking,
  ...settingWorking,
};

/** How every number of the plan's `finset` comes about, and what was assumed for it. */
export const finsetWorking: WorkingTable<FinsetContext> = Object.fromEntries(
  Object.entries(tables).map(([pattern, working]) => [
    pattern,
    {
      ...working,
      assumes: (context, ids) => listAssumed(pattern, context, ids),
    } satisfies Working<FinsetContext>,
  ]),
);
