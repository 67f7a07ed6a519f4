import { homedir } from "node:os";
import { join, resolve } from "node:path";
import type { Shop } from "@lapline/store";
import type { CommandOption } from "../Command";
import { RefusedError } from "../RefusedError";
import { reasonOf } from "../reasonOf";
import type { Terminal } from "../Terminal";
import { version } from "./version";

/** Where a shop is kept, and the words for it that give no password away. */
export interface ShopPlace {
  readonly folder: string;
  readonly databaseUrl?: string;
  readonly words: string;
}

export const DATA_OPTION: CommandOption = {
  value: "DIR",
  says: "the shop's folder; .lapline in the home folder if left out",
};

const URL_NAME = "LAPLINE_DATABASE_URL";

/** The folder asked for, and a PostgreSQL database where the environment names one. */
export function shopPlaceOf(data: string | true | undefined): ShopPlace {
  const folder = resolve(typeof data === "string" ? data : join(homedir(), ".lapline"));
  const databaseUrl = process.env[URL_NAME];
  if (databaseUrl === undefined || databaseUrl === "") return { folder, words: folder };
  if (!/^postgres(?:ql)?:\/\//.test(databaseUrl) || !URL.canParse(databaseUrl))
    throw new RefusedError(`${URL_NAME} is an address such as postgres://user@machine/database.`);
  const { hostname, pathname } = new URL(databaseUrl);
  return {
    folder,
    databaseUrl,
    words: `the PostgreSQL database ${pathname.slice(1)} on ${hostname || "this machine"}, photos and Sheets in ${folder}`,
  };
}

/** Opens the shop, or says in one line why it cannot be opened. */
export async function openShopFor({ words, ...place }: ShopPlace, terminal: Terminal): Promise<Shop> {
  // Only here, so that the other commands start without a database.
  const { openShop } = await import("@lapline/store");
  const report = (message: string) => terminal.tell(message);
  try {
    return await openShop({ ...place, engine: version, now: () => terminal.now(), report });
  } catch (error) {
    throw new RefusedError(`Cannot open the shop in ${words}: ${reasonOf(error)}.`);
  }
}
