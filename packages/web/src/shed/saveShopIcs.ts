import { utcOfWall } from "@lapline/contract";
import { SHOP_DEFAULTS, type ShopCalendar } from "@lapline/engine";
import type { Reader } from "@lapline/present";
import { saveFile } from "../papers/saveFile";
import type { GoodBoard } from "../plan/GoodBoard";

interface ShopIcs {
  readonly boards: ReadonlyArray<GoodBoard & { readonly id: string }>;
  readonly shop: ShopCalendar;
  readonly reader: Reader;
  readonly stamp: Date;
}

/** The shop's days as one iCalendar file, by the hours and clock of the first board's shop; what makes it is fetched only then. */
export async function saveShopIcs(asked: ShopIcs): Promise<void> {
  const text = await shopIcs(asked);
  if (text !== null) saveFile("shop.ics", "text/calendar", text);
}

export async function shopIcs({ boards, shop, reader, stamp }: ShopIcs): Promise<string | null> {
  const { calendarIcs } = await import("@lapline/present/calendar");
  const first = boards[0]?.file.shop;
  const zone = first?.timeZone;
  return calendarIcs(
    boards.map(({ id, file, plan }) => ({
      board: file.order?.serial ?? file.name,
      plan: { ...plan, calendar: shop.boards.find((board) => board.id === id)?.calendar ?? null },
    })),
    {
      stamp,
      reader,
      hours: first?.hours ?? SHOP_DEFAULTS.hours,
      utcOf: zone === undefined ? null : (wallText) => utcOfWall(zone, wallText),
    },
  );
}
