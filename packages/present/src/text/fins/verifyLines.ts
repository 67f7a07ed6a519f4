import { angle, duration, length, type Plan, type Quantity, volume } from "@lapline/engine";
import type { Reader } from "../../language/Reader";
import { showQuantity } from "../../language/showQuantity";
import { tell } from "../../language/tell";
import { tellText } from "../../language/tellText";
import { cautionWords } from "../../words/cautionWords";
import { checkName, readingWords, verdictWords } from "../../words/checkWords";
import { formatDifference } from "../../words/formatDifference";
import { formatTapeLength } from "../../words/formatTapeLength";
import { formatTolerance } from "../../words/formatTolerance";
import { readNoLoadS } from "../../words/readNoLoadS";
import { statedTailWord } from "../../words/tailWords";
import { formatTable } from "../formatTable";
import { wrapText } from "../wrapText";
import { figure, words } from "./finTables";

type Finset = NonNullable<Plan["finset"]>;
type Check = Finset["verify"]["checks"][number];

const BOX: Readonly<Record<Check["state"], string>> = { good: "[x]", open: "[ ]", out: "[!]" };

/** Mark and verify: the verdict, then every check in its order with its targets and what was read. */
export function gateLines({ verify, line }: Finset, reader: Reader): readonly string[] {
  const t = tell(reader);
  const { short, follows } = verdictWords(verify, reader);
  return [
    ...wrapText(t`MARK AND VERIFY: ${short.toUpperCase()}. ${follows}`, { indent: 2, hanging: 4 }),
    ...cautionWords(verify.cautions).flatMap((caution) =>
      wrapText(`! ${tellText(caution, reader)}`, { indent: 2, hanging: 4 }),
    ),
    ...verify.checks.flatMap((check) =>
      wrapText(
        `${BOX[check.state]} ${checkName(check, reader)}${readings(check, { reader, from: statedTailWord(line) })}`,
        { indent: 2, hanging: 6 },
      ),
    ),
  ];
}

interface ReadBy {
  readonly reader: Reader;
  /** What distances from the tail start at. */
  readonly from: string;
}

function readings(check: Check, { reader, from }: ReadBy): string {
  const t = tell(reader);
  const show = (quantity: Quantity): string => showQuantity(quantity, reader);
  const said = [
    ...check.lengths.map(({ id, targetM, toleranceM, readM }) =>
      reading(check, {
        reader,
        said: readingWords(id, reader, from),
        target: showLength(check, { id, valueM: targetM }, reader),
        within: toleranceM === null ? null : formatTolerance(toleranceM, reader),
        read: readM === null ? null : showLength(check, { id, valueM: readM }, reader),
      }),
    ),
    ...check.angles.map(({ id, targetRad, toleranceRad, readRad }) =>
      reading(check, {
        reader,
        said: readingWords(id, reader),
        target: show(angle(targetRad)),
        within: toleranceRad === null ? null : show(angle(toleranceRad)),
        read: readRad === null ? null : show(angle(readRad)),
      }),
    ),
  ].filter((text) => text !== null);
  const optional = check.required ? "" : ` ${t`(if wanted)`}`;
  return said.length === 0 ? optional : `${optional}: ${said.join("; ")}`;
}

/** What is read off a tape is rounded as the tables round it; how far two readings differ is told in millimetres. */
function showLength(
  { matter }: Check,
  { id, valueM }: { readonly id: string; readonly valueM: number },
  reader: Reader,
): string {
  if (id === "differ" || matter === "sides") return `${formatDifference(valueM, reader)} mm`;
  if (matter === "diagonals" || matter === "string" || id.includes("-from-"))
    return formatTapeLength(valueM, reader);
  return showQuantity(length(valueM, "fine"), reader);
}

/** In words, in the reader's units. */
interface OneReading {
  readonly said: string;
  readonly target: string;
  readonly within: string | null;
  readonly read: string | null;
  readonly reader: Reader;
}

/** The marks' own targets stand in the table above, and are said here only with what was read. */
function reading({ matter }: Check, { said, target, within, read, reader }: OneReading): string | null {
  const t = tell(reader);
  if (read === null && (matter === "marks" || matter === "sides")) return null;
  return `${said} ${target}${within === null ? "" : ` +/- ${within}`}${read === null ? "" : t`, read ${read}`}`;
}

/** Cloth is cut by the scissors, not by the tape's finest mark. */
function patchWords(
  { lengthM, widthM }: { readonly lengthM: number; readonly widthM: number },
  reader: Reader,
): string {
  return `${showQuantity(length(lengthM), reader)} x ${showQuantity(length(widthM), reader)}`;
}

/** How each box is let in, or each base glassed on. */
export function boxLines(plan: Plan, { verify }: Finset, reader: Reader): readonly string[] {
  const t = tell(reader);
  const show = (valueM: number | null): string =>
    valueM === null ? "-" : showQuantity(length(valueM, "fine"), reader);
  if (verify.boxes.length > 0) {
    const [first] = verify.boxes;
    const table = formatTable(
      [
        words(t`pocket, from the ${verify.surface}`),
        figure(t`long`),
        figure(t`wide`),
        figure(t`deep`),
        figure(t`bit`),
        figure(t`foam left`),
        figure(t`resin`),
        figure(t`patch`),
      ],
      verify.boxes.map((box) => [
        tellText(box.id, reader),
        show(box.cutOut.lengthM),
        show(box.cutOut.widthM),
        show(box.cutOut.depthM),
        show(box.bits.find(({ id }) => id === reader.units)?.diameterM ?? null),
        show(box.foamOverCutM),
        showQuantity(volume(box.fillVolumeM3), reader),
        box.patch === null ? "-" : patchWords(box.patch, reader),
      ]),
    );
    return [
      ...table,
      ...(first === undefined ? [] : loadLines(readNoLoadS(plan, "boxes", first.cureBeforeLoadS), reader)),
    ];
  }
  if (verify.glassedOn.length === 0) return [];
  const [first] = verify.glassedOn;
  const table = formatTable(
    [
      words(t`glassed on`),
      figure(t`fillet radius`),
      figure(t`resin`),
      figure(t`tacks`),
      figure(t`cloth, each side`),
    ],
    verify.glassedOn.map((fin) => [
      tellText(fin.id, reader),
      show(fin.filletRadiusM),
      showQuantity(volume(fin.filletVolumeM3), reader),
      show(fin.tackLengthM),
      patchWords(fin.patch, reader),
    ]),
  );
  return [
    ...table,
    ...(first === undefined ? [] : loadLines(readNoLoadS(plan, "boxes", first.cureBeforeLoadS), reader)),
  ];
}

function loadLines(cureS: number, reader: Reader): readonly string[] {
  const t = tell(reader);
  return wrapText(
    t`No load on them for ${showQuantity(duration(cureS), reader)}, or as the resin's sheet asks.`,
    {
      indent: 2,
    },
  );
}
