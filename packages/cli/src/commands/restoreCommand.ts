import { type FileHandle, open } from "node:fs/promises";
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
    const refused = (error: unknown) =>
      new RefusedError(`${copy} was not taken into ${place.words}: ${reasonOf(error)}.`);
    // Before the shop, so that a copy that is not there leaves no new shop behind, and is not taken for a database that is away.
    const file: FileHandle = await open(copy).catch((error: unknown) => {
      throw refused(error);
    });
    const shop = await openShopFor(place, terminal);
    try {
      // A day's copy lies beside the folder with its photos and Sheets.
      const contentFolder = join(dirname(resolve(copy)), "..", "content");
      await shop.import(file.createReadStream(), { contentFolder });
    } catch (error) {
      throw refused(error);
    } finally {
      await shop.close();
      await file.close();
    }
    terminal.print(place.words);
    return 0;
  },
};
