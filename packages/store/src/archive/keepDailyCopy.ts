import { readdir, rm } from "node:fs/promises";
import { join } from "node:path";
import { makeFolder } from "../content/makeFolder";
import type { Shop } from "../Shop";
import { makeCopy } from "./makeCopy";

const NAME = /^shop-\d{4}-\d{2}-\d{2}\.jsonl$/;

export interface DailyCopy {
  /** The shop's folder; copies lie in `copies` in it. */
  readonly folder: string;
  /** `2026-04-11`, where the shop is. */
  readonly day: string;
  /** How many days' copies stay. */
  readonly kept: number;
}

/**
 * Makes this day's copy where it is not there yet, then takes away the oldest beyond the number kept. Whether one was made. Photos and
 * Sheets are left out: their files never change, are never taken away, and lie beside the copies in `content`.
 */
export async function keepDailyCopy(shop: Shop, { folder, day, kept }: DailyCopy): Promise<boolean> {
  const copies = join(folder, "copies");
  await makeFolder(copies);
  const name = `shop-${day}.jsonl`;
  const there = (await readdir(copies)).filter((each) => NAME.test(each));
  if (there.includes(name)) return false;
  await makeCopy(shop, join(copies, name), { withoutContents: true });
  const old = [...there, name].sort().slice(0, -kept);
  for (const each of old) await rm(join(copies, each), { force: true });
  return true;
}
