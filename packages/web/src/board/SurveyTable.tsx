import type { BoardFile, Problem } from "@lapline/contract";
import { length, type Phrase, type Plan } from "@lapline/engine";
import { tellText } from "@lapline/present";
import { memo, useState } from "react";
import type { PadBeside } from "../pad/PadTarget";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { problemAt } from "./problemAt";
import { QuantityField } from "./QuantityField";
import { type FieldPath, formatFieldPath } from "./withField";

interface SurveyTableProps {
  readonly file: BoardFile;
  readonly plan: Plan;
  readonly problems: readonly Problem[];
  edit(path: FieldPath, value: unknown): void;
}

const READINGS = [
  { field: "left", name: "left" },
  { field: "right", name: "right" },
  { field: "thickness", name: "thick" },
  { field: "rocker", name: "rocker" },
] as const;

/** The readings as they were taken, each to be typed anew: one row for each place where the tape was held. */
export function SurveyTable({ file, plan, problems, edit }: SurveyTableProps) {
  const t = useTell();
  const { reader } = useSettings();
  const { stations } = file.survey;
  return (
    <div className="survey">
      <table>
        <caption className="unseen">{t`Readings, one row for each station`}</caption>
        <thead>
          <tr>
            <th scope="col">{t`place`}</th>
            {READINGS.map(({ field, name }) => (
              <th key={field} scope="col">
                {tellText(name, reader)}
              </th>
            ))}
            <td />
          </tr>
        </thead>
        <tbody>
          {stations.map((station, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a station is known by its place in the file, as its path is
            <StationRow key={i} index={i} readings={plan.shape?.readings} {...{ station, problems, edit }} />
          ))}
        </tbody>
      </table>
      <AddStation add={(fromTail) => edit(["survey", "stations", stations.length], { fromTail })} />
    </div>
  );
}

interface StationRowProps extends Pick<SurveyTableProps, "problems" | "edit"> {
  readonly index: number;
  readonly station: Station;
  readonly readings: Readings | undefined;
}

/** Of all rows only those that changed are made anew with a key, and of their readings too. */
const StationRow = memo(function StationRow({ index, station, readings, problems, edit }: StationRowProps) {
  const { reader } = useSettings();
  const path = ["survey", "stations", index];
  const end = station.fromNose === undefined ? "fromTail" : "fromNose";
  const t = useTell();
  const endName = end === "fromTail" ? t`from tail` : t`from nose`;
  const ownProblem = problemAt(problems, path);
  return (
    <tr>
      <th scope="row">
        <QuantityField
          label={t`station ${index + 1}, ${endName}`}
          labelUnseen
          value={station[end]}
          problem={problemAt(problems, [...path, end]) ?? ownProblem}
          onType={(text) => edit([...path, end], text)}
        />
        <button
          type="button"
          className="plain"
          title={t`measure this station from the other end`}
          onClick={() => edit(path, turned(station))}
        >
          {endName}
        </button>
      </th>
      {READINGS.map(({ field, name }) => (
        <td key={field} data-name={tellText(name, reader)}>
          <ReadingField
            {...readingOf(station, field)}
            {...{ index, field, name, edit }}
            problem={problemAt(problems, [...path, placeOf(field, station)])}
            wouldFitM={wouldFitOf(readings, [...path, field])}
          />
        </td>
      ))}
      <td className="row-act">
        <button type="button" className="plain" onClick={() => edit(path, undefined)}>
          {t`remove`}
          <span className="unseen"> {t`station ${index + 1}`}</span>
        </button>
      </td>
    </tr>
  );
});

type Station = BoardFile["survey"]["stations"][number];
type Readings = NonNullable<Plan["shape"]>["readings"];

type Reading = (typeof READINGS)[number]["field"];

interface ReadingFieldProps {
  readonly index: number;
  readonly field: Reading;
  readonly name: string;
  /** The board's width was read whole here: it stands in the place of the left. */
  readonly isWhole: boolean;
  readonly value: string | undefined;
  /** What was read on the other side of the stringer. */
  readonly otherValue: string | undefined;
  readonly problem: Phrase | undefined;
  /** What the other readings would have here, where this one is suspect. */
  readonly wouldFitM: number | null;
  edit(path: FieldPath, value: unknown): void;
}

const ReadingField = memo(function ReadingField(props: ReadingFieldProps) {
  const t = useTell();
  const { reader } = useSettings();
  const { index, field, name, isWhole, value, otherValue, problem, wouldFitM, edit } = props;
  if (isWhole && field === "right") return <p className="quiet">{t`whole width read`}</p>;
  const typed = ["survey", "stations", index, isWhole ? "width" : field];
  return (
    <QuantityField
      label={t`station ${index + 1}, ${isWhole ? t`whole width` : tellText(name, reader)}`}
      labelUnseen
      value={value}
      problem={problem}
      at={formatFieldPath(typed)}
      beside={{
        ...(isWhole ? {} : sameOtherSide(field, otherValue)),
        nextStation: formatFieldPath(["survey", "stations", index + 1, field]),
      }}
      suspect={wouldFitM === null ? undefined : t`re-measure: ${length(wouldFitM)} would fit`}
      onType={(text) => edit(typed, text.trim() === "" ? undefined : text)}
    />
  );
});

function readingOf(
  station: Station,
  field: Reading,
): Pick<ReadingFieldProps, "isWhole" | "value" | "otherValue"> {
  const place = placeOf(field, station);
  return {
    isWhole: place === "width",
    value: station[place],
    otherValue: isSide(field) ? station[otherSide(field)] : undefined,
  };
}

const isSide = (field: Reading): field is "left" | "right" => field === "left" || field === "right";

/** Its name in the file: a width that was read whole stands for both sides. */
const placeOf = (field: Reading, station: Station) =>
  station.width !== undefined && isSide(field) ? "width" : field;

const otherSide = (side: "left" | "right") => (side === "left" ? "right" : "left");

function wouldFitOf(readings: Readings | undefined, path: FieldPath): number | null {
  const at = formatFieldPath(path);
  const reading = readings?.find((each) => each.path === at);
  return reading?.suspect === true ? reading.wouldFitM : null;
}

/** A half-width has its other side, which it is most often the same as. */
function sameOtherSide(field: Reading, value: string | undefined): Pick<PadBeside, "other"> {
  return isSide(field) ? { other: { name: otherSide(field), value } } : {};
}

/** The same station measured from the other end: the number is the reader's to type. */
function turned(station: Station): unknown {
  const { fromTail, fromNose, ...readings } = station;
  return fromNose === undefined ? { fromNose: fromTail, ...readings } : { fromTail: fromNose, ...readings };
}

function AddStation({ add }: { add(fromTail: string): void }) {
  const t = useTell();
  const [place, setPlace] = useState("");
  return (
    <form
      className="add-station"
      onSubmit={(event) => {
        event.preventDefault();
        if (place.trim() === "") return;
        add(place.trim());
        setPlace("");
      }}
    >
      <QuantityField label={t`Another station, from the tail`} value={place} onType={setPlace} />
      <button type="submit">{t`Add`}</button>
    </form>
  );
}
