import { fraction, type Plan, say } from "@lapline/engine";
import type { Reader } from "../../language/Reader";
import { tell } from "../../language/tell";
import { tellPhrase } from "../../language/tellPhrase";
import { tellText } from "../../language/tellText";
import { type Column, formatTable } from "../formatTable";
import { wrapText } from "../wrapText";

type Mix = NonNullable<Plan["mix"]>;
type Clock = NonNullable<Mix["coats"][number]["clock"]>;

const figure = (head: string): Column => ({ head, align: "right" });

const STAGES = [
  ["trimFrom", say`trim from`],
  ["trimUntil", say`until`],
  ["pullTape", say`tape off`],
  ["flip", say`flip`],
  ["recoatFrom", say`recoat from`],
  ["recoatUntil", say`until`],
  ["sandable", say`sand`],
] as const;
const ENDS = [
  ["", say``],
  ["Low", say`- early`],
  ["High", say`- late`],
] as const;

/** The film's clock on the board, from the last cup on, each time with its band. */
export function filmLines(mix: Mix, reader: Reader): readonly string[] {
  const t = tell(reader);
  const rows = mix.coats.flatMap(({ id, clock }) =>
    clock === null
      ? []
      : ENDS.map(([end, name]) => [
          end === "" ? tellText(id, reader) : tellPhrase(name, reader),
          ...timesOf(clock, end),
        ]),
  );
  if (rows.length === 0) return [];
  return [
    ...formatTable(
      [
        { head: t`on the board, hours:minutes`, align: "left" },
        ...STAGES.map(([, head]) => figure(tellPhrase(head, reader))),
      ],
      rows,
    ),
    ...wrapText(
      t`A fingertip is better than any of these times. Once recoat has closed, and always over wax, the next coat bonds only to a sanded face: sand it dull, dust it off, then coat.`,
      { indent: 2 },
    ),
    ...startedLines(mix, reader),
  ];
}

function timesOf(clock: Clock, end: (typeof ENDS)[number][0]): readonly string[] {
  return STAGES.map(([stage]) => {
    const timeS = clock[`${stage}${end}S`];
    return timeS === null ? "-" : hoursAndMinutes(timeS);
  });
}

/** `1:40`: a table of them is read down, and two words for each time would not fit the page. */
function hoursAndMinutes(timeS: number): string {
  const minutes = Math.round(timeS / 60);
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
}

/** Coats whose clock the record has started, and moved. */
function startedLines(mix: Mix, reader: Reader): readonly string[] {
  const t = tell(reader);
  return mix.coats.flatMap(({ id, startedAt, paceRatio }) => {
    if (startedAt === null) return [];
    const at = startedAt.replace("T", " ");
    const text =
      paceRatio === null
        ? t`${id}: counted from ${at}, as recorded.`
        : t`${id}: counted from ${at}, as recorded. By fingertip it takes ${fraction(paceRatio)} of the model's time.`;
    return wrapText(text, {
      indent: 2,
      hanging: 4,
    });
  });
}
