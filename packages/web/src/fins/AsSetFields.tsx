import { angle } from "@lapline/engine";
import { checkName, tellText } from "@lapline/present";
import { FindingTape } from "../board/FindingTape";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Amount } from "../shared/Amount";
import { Choice } from "../shared/Choice";
import { TapeAmount } from "../shared/TapeAmount";
import { type AsSetPlace, findAsSet, readAsSet, withAsSet } from "./asSetReadings";
import { problemAt } from "./FinsField";
import type { FinMark, FinsForm, VerifyCheck } from "./FinsForm";
import { findingsAt } from "./findingsAt";
import { StateWord } from "./StateWord";
import { statedTail } from "./statedTail";
import { TargetField } from "./TargetField";

interface AsSetFieldsProps {
  readonly form: FinsForm;
  readonly check: VerifyCheck;
  readonly mark: FinMark;
}

const DISTANCES = [
  { place: ["trailing", "fromTail"], label: "trailing, from tail", reading: "trailing-from-tail" },
  {
    place: ["trailing", "fromCentreline"],
    label: "trailing, from line",
    reading: "trailing-from-centreline",
  },
  { place: ["leading", "fromTail"], label: "leading, from tail", reading: "leading-from-tail" },
  { place: ["leading", "fromCentreline"], label: "leading, from line", reading: "leading-from-centreline" },
] as const;
const SURFACES = ["not said", "foam", "laminate", "fill"] as const;

/** A fin as it was measured, both ends and its cant, each under what it should be; and the verdict on it. */
export function AsSetFields({ form, check, mark }: AsSetFieldsProps) {
  const { reader } = useSettings();
  const t = useTell();
  const { fins, plan, edit } = form;
  const at = findAsSet(fins.asSet, mark);
  const entry = fins.asSet?.[at];
  const type = (place: AsSetPlace, text: string): void =>
    edit(["fins", "asSet"], withAsSet(fins.asSet, mark, { place, text }));
  const common = (place: AsSetPlace) => ({
    value: readAsSet(entry, place),
    problem: at === -1 ? undefined : problemAt(form, ["asSet", at, ...place]),
    onType: (text: string) => type(place, text),
  });
  return (
    <fieldset className="reading">
      <legend>{checkName(check, reader)}</legend>
      <StateWord check={check} />
      <div className="fields">
        {DISTANCES.map(({ place, label, reading }) => (
          <TargetField
            key={reading}
            target={
              <TapeAmount
                ofM={check.lengths.find(({ id }) => id === reading)?.targetM ?? null}
                why={`finset.verify.checks[${check.id}].lengths[${reading}].targetM`}
              />
            }
            label={tellText(label.replace("tail", statedTail(form)), reader)}
            {...common(place)}
          />
        ))}
        <TargetField
          target={<Amount of={angle(mark.cantRad)} why={`finset.marks[${mark.id}].cantRad`} />}
          label={t`cant`}
          dimension="angle"
          {...common(["cant"])}
        />
        {entry !== undefined && (
          <Choice
            label={t`measured on`}
            value={entry.on ?? "not said"}
            choices={SURFACES}
            names={{ fill: t`fill coat` }}
            choose={(surface) => type(["on"], surface === "not said" ? "" : surface)}
          />
        )}
      </div>
      {at !== -1 &&
        findingsAt(plan, `fins.asSet[${at}]`).map((finding) => (
          <FindingTape key={finding.code} finding={finding} />
        ))}
    </fieldset>
  );
}
