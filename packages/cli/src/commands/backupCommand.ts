import { resolve } from "node:path";
import type { Command } from "../Command";
import { RefusedError } from "../RefusedError";
import { reasonOf } from "../reasonOf";
import { DATA_OPTION, openShopFor, shopPlaceOf } from "../shop/shopPlace";

export const backupCommand: Command = {
  name: "backup",
  needs: ["OUT.jsonl"],
  says: "a copy of the whole shop in one file, also while the app runs",
  options: { data: DATA_OPTION },
  async run({ given: [out = ""], options }, terminal) {
    const shop = await openShopFor(shopPlaceOf(options.data), terminal);
    try {
      const { makeCopy } = await import("@lapline/store");
      await makeCopy(shop, resolve(out));
    } catch (error) {
      throw new RefusedError(`No copy was made in ${out}: ${reasonOf(error)}.`);
    } finally {
      await shop.close();
    }
    terminal.print(out);
    return 0;
  },
};
