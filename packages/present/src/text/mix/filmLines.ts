import { fraction, type Plan } from "@lapline/engine";
import type { Reader } from "../../language/Reader";
import { showQuantity } from "../../language/showQuantity";
import { type Column, formatTable } from "../formatTable";
import { wrapText } from "../wrapText";

type Mix = NonNullable<Plan["mix"]>;
type Clock = NonNullable<Mix["coats"][number]["clock"]>;

const figure = (head: string): Column => ({ head, align: "right" });

const STAGES = [
  ["trimFrom", "trim from"],
  ["trimUntil", "until"],
  ["pullTape", "tape off"],
  ["flip", "flip"],
  ["recoatFrom", "recoat from"],
  ["recoatUntil", "until"],
  ["sandable", "sand"],
] as const;
const ENDS = [
  ["", ""],
  ["Low", "- early"],
  ["High", "- late"],
] as const;

/** The film's clock on the board, from the last cup on, each time with its band. */
export function filmLines(mix: Mix, reader: Reader): readonly string[] {
  const rows = mix.coats.flatMap(({ id, clock }) =>
    clock === null ? [] : ENDS.map(([end, name]) => [name === "" ? id : name, ...timesOf(clock, end)]),
  );
  if (rows.length === 0) return [];
  return [
    ...formatTable(
      [{ head: "on the board, hours:minutes", align: "left" }, ...STAGES.map(([, head]) => figure(head))],
      rows,
    ),
    ...wrapText(
      "A fingertip is better than any of these times. Once recoat has closed, and always over wax, the next coat bonds only to a sanded face: sand it dull, dust it off, then coat.",
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
  return mix.coats.flatMap(({ id, startedAt, paceRatio }) => {
    if (startedAt === null) return [];
    const pace =
      paceRatio === null
        ? ""
        : ` By fingertip it takes ${showQuantity(fraction(paceRatio), reader)} of the model's time.`;
    return wrapText(`${id}: counted from ${startedAt.replace("T", " ")}, as recorded.${pace}`, {
      indent: 2,
      hanging: 4,
    });
  });
}
