import { createReadStream } from "node:fs";
import { createInterface } from "node:readline";
import type { Command } from "../Command";
import { RefusedError } from "../RefusedError";
import { reasonOf } from "../reasonOf";
import { DATA_OPTION, openShopFor, shopPlaceOf } from "../shop/shopPlace";

export const restoreCommand: Command = {
  name: "restore",
  needs: ["COPY.jsonl"],
  says: "takes a copy of a shop into an empty folder, whole or not at all",
  options: { data: DATA_OPTION },
  async run({ given: [copy = ""], options }, terminal) {
    const place = shopPlaceOf(options.data);
    const shop = await openShopFor(place, terminal);
    try {
      const input = createReadStream(copy, "utf8");
      // A file that cannot be read has to end the reading of its lines, which does not hear of it by itself.
      const lines = createInterface({ input, crlfDelay: Number.POSITIVE_INFINITY });
      const failed = new Promise<never>((_, reject) => input.once("error", reject));
      await Promise.race([failed, shop.import(lines)]);
    } catch (error) {
      throw new RefusedError(`${copy} was not taken into ${place.words}: ${reasonOf(error)}.`);
    } finally {
      await shop.close();
    }
    terminal.print(place.words);
    return 0;
  },
};
