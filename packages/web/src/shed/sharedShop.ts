import type { buildShopCalendar, Plan, ShopBoard, ShopCalendar } from "@lapline/engine";

/** What the shop's thread is asked: boards under their own ids, and so many pairs of stands. */
export interface ShopAsked {
  readonly boards: readonly ShopBoard[];
  readonly stands: number;
}

export type ShopAnswer = ReturnType<typeof buildShopCalendar>;

/** The plans with the days that they have in the shop, where they wait for each other, in place of those that each has alone. */
export function plansInShop(plans: ReadonlyMap<string, Plan>, shop: ShopCalendar): readonly Plan[] {
  return shop.boards.flatMap(({ id, calendar }) => {
    const plan = plans.get(id);
    return plan === undefined
      ? []
      : [{ ...plan, name: id, calendar, water: { ...plan.water, firstSurfAt: surfIn(calendar) } }];
  });
}

/** Boards under their own names, as the shop's days tell them; those of one name are told apart by a number. */
export function nameApart<B extends { readonly file: { readonly name: string } }>(
  boards: readonly B[],
): ReadonlyArray<B & { readonly id: string }> {
  return boards.map((board, i) => {
    const { name } = board.file;
    const alike = boards.slice(0, i).filter(({ file }) => file.name === name).length;
    return { ...board, id: alike === 0 ? name : `${name} #${alike + 1}` };
  });
}

/** When a board comes to the water by these days; null where the days do not reach so far. */
export function surfIn(calendar: ShopCalendar["boards"][number]["calendar"]): string | null {
  return calendar.find(({ step }) => step === "water")?.endsAt ?? null;
}

/** Boards that can share stands: with days that are dated, and not all of them over. */
export function canShare({ calendar }: Plan): boolean {
  const left = (calendar ?? []).filter(({ done }) => !done);
  return left.some(({ startsAt }) => startsAt?.includes("T") === true);
}
