import { duration, type Plan, type ShopCalendar } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { stepTitle } from "../words/stepTitle";
import { wallMs } from "../words/wallMs";
import { wallTimeWords } from "../words/wallTimeWords";
import { asciiText } from "./asciiText";
import { formatTable } from "./formatTable";
import { wrapText } from "./wrapText";

export interface ShopText {
  /** With their plans as each alone would have them, in the order of the shop's calendar. */
  readonly boards: ReadonlyArray<{ readonly id: string; readonly plan: Plan }>;
  readonly shop: ShopCalendar;
}

/** Several boards in one shop: when each comes to the water and what that costs it, who is on which stands when, and what must not slip. */
export function formatShopText(text: ShopText, reader: Reader): string {
  const t = tell(reader);
  const lines = [
    t`FIRST SURF`,
    ...surfTable(text, reader),
    "",
    t`STANDS`,
    ...standTable(text, reader),
    "",
    t`WHAT SLIPS`,
    ...wrapText(
      t`So late each step may begin with every board's first surf where it is; what is left out has no room at all.`,
      {
        indent: 2,
      },
    ),
    ...slackTable(text, reader),
  ];
  return `${asciiText(lines.join("\n"))}\n`;
}

type Entry = ShopCalendar["boards"][number]["calendar"][number];

function surfTable({ boards, shop }: ShopText, reader: Reader): readonly string[] {
  const t = tell(reader);
  const rows = shop.boards.map(({ id, calendar }, i) => {
    const alone = boards[i]?.plan.water.firstSurfAt ?? null;
    const here = calendar.find(({ step }) => step === "water")?.endsAt ?? null;
    const waits = (cause: Entry["because"]["cause"]) =>
      calendar.filter((entry) => !entry.done && entry.because.cause === cause).length;
    const laterS = alone === null || here === null ? null : (wallMs(here) - wallMs(alone)) / 1000;
    return [
      id,
      timeText(alone, reader),
      timeText(here, reader),
      laterS === null || laterS <= 0 ? "-" : showQuantity(duration(laterS), reader),
      String(waits("stand")),
      String(waits("hands")),
    ];
  });
  return formatTable(
    [
      { head: t`board`, align: "left" },
      { head: t`alone`, align: "left" },
      { head: t`here`, align: "left" },
      { head: t`later by`, align: "right" },
      { head: t`steps that wait for stands`, align: "right" },
      { head: t`for hands`, align: "right" },
    ],
    rows,
  );
}

function standTable({ shop }: ShopText, reader: Reader): readonly string[] {
  const t = tell(reader);
  return formatTable(
    [
      { head: t`stands`, align: "right" },
      { head: t`from`, align: "left" },
      { head: t`to`, align: "left" },
      { head: t`board`, align: "left" },
    ],
    shop.stands.map(({ stand, fromAt, toAt, board }) => [
      String(stand),
      timeText(fromAt, reader),
      timeText(toAt, reader),
      board,
    ]),
  );
}

function slackTable({ boards, shop }: ShopText, reader: Reader): readonly string[] {
  const t = tell(reader);
  const rows = shop.boards.flatMap(({ id, calendar }, i) =>
    calendar.flatMap((entry) => {
      if (entry.done || entry.slackS === null || entry.slackS <= 0) return [];
      const title = boards[i]?.plan.steps?.find(({ id: step }) => step === entry.step)?.title ?? entry.step;
      return [
        [
          id,
          stepTitle(title, reader).split(/[,;:]/)[0] ?? entry.step,
          timeText(entry.startsAt, reader),
          timeText(entry.latestStartAt, reader),
          showQuantity(duration(entry.slackS), reader),
        ],
      ];
    }),
  );
  return formatTable(
    [
      { head: t`board`, align: "left" },
      { head: t`step`, align: "left" },
      { head: t`planned`, align: "left" },
      { head: t`at the latest`, align: "left" },
      { head: t`room`, align: "right" },
    ],
    rows,
  );
}

function timeText(at: string | null, reader: Reader): string {
  if (at === null) return "-";
  const { shortDay, clock } = wallTimeWords(at, reader);
  return `${shortDay} ${clock}`;
}
