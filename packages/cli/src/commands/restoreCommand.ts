import { createReadStream } from "node:fs";
import { dirname, join, resolve } from "node:path";
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
      // A day's copy lies beside the folder with its photos and Sheets.
      const contentFolder = join(dirname(resolve(copy)), "..", "content");
      await shop.import(createReadStream(copy), { contentFolder });
    } catch (error) {
      throw new RefusedError(`${copy} was not taken into ${place.words}: ${reasonOf(error)}.`);
    } finally {
      await shop.close();
    }
    terminal.print(place.words);
    return 0;
  },
};
