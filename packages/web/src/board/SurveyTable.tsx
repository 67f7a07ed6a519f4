import type { BoardFile, Problem } from "@lapline/contract";
import { length, type Plan } from "@lapline/engine";
import { tellText } from "@lapline/present";
import { useState } from "react";
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
          {stations.map((_, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a station is known by its place in the file, as its path is
            <StationRow key={i} index={i} {...{ file, plan, problems, edit }} />
          ))}
        </tbody>
      </table>
      <AddStation add={(fromTail) => edit(["survey", "stations", stations.length], { fromTail })} />
    </div>
  );
}

function StationRow({ index, file, plan, problems, edit }: SurveyTableProps & { index: number }) {
  const { reader } = useSettings();
  const station = file.survey.stations[index];
  const path = ["survey", "stations", index];
  const end = station?.fromNose === undefined ? "fromTail" : "fromNose";
  const t = useTell();
  const endName = end === "fromTail" ? t`from tail` : t`from nose`;
  const ownProblem = problemAt(problems, path);
  return (
    <tr>
      <th scope="row">
        <QuantityField
          label={t`station ${index + 1}, ${endName}`}
          labelUnseen
          value={station?.[end]}
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
          <ReadingField {...{ index, field, name, file, plan, problems, edit }} />
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
}

type Station = BoardFile["survey"]["stations"][number];

interface ReadingName {
  readonly field: (typeof READINGS)[number]["field"];
  readonly name: string;
}

function ReadingField(props: SurveyTableProps & ReadingName & { index: number }) {
  const t = useTell();
  const { index, field, name, file, plan, problems, edit } = props;
  const { reader } = useSettings();
  const path = ["survey", "stations", index, field];
  const at = formatFieldPath(path);
  const station = file.survey.stations[index];
  const whole = station?.width !== undefined && (field === "left" || field === "right");
  if (whole && field === "right") return <p className="quiet">{t`whole width read`}</p>;
  const typed = whole ? ["survey", "stations", index, "width"] : path;
  const reading = plan.shape?.readings.find((each) => each.path === at);
  return (
    <QuantityField
      label={t`station ${index + 1}, ${whole ? t`whole width` : tellText(name, reader)}`}
      labelUnseen
      value={whole ? station.width : station?.[field]}
      problem={problemAt(problems, typed)}
      at={formatFieldPath(typed)}
      beside={{
        ...(whole ? {} : sameOtherSide(field, station)),
        nextStation: formatFieldPath(["survey", "stations", index + 1, field]),
      }}
      suspect={reading?.suspect === true ? t`re-measure: ${length(reading.wouldFitM)} would fit` : undefined}
      onType={(text) => edit(typed, text.trim() === "" ? undefined : text)}
    />
  );
}

/** A half-width has its other side, which it is most often the same as. */
function sameOtherSide(field: ReadingName["field"], station: Station | undefined): Pick<PadBeside, "other"> {
  if (field !== "left" && field !== "right") return {};
  const name = field === "left" ? "right" : "left";
  return { other: { name, value: station?.[name] } };
}

/** The same station measured from the other end: the number is the reader's to type. */
function turned(station: Station | undefined): unknown {
  if (station === undefined) return undefined;
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
