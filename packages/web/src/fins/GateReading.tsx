import { checkName, readingWords, tell } from "@lapline/present";
import { Fragment, useState } from "react";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import { Fractions } from "../shared/Fractions";
import { WhyNumber } from "../why/WhyNumber";
import { problemAt } from "./FinsField";
import type { FinsForm, VerifyCheck } from "./FinsForm";
import { readingOf } from "./readingOf";
import { StateWord } from "./StateWord";
import { TargetField } from "./TargetField";
import { toleranceWords } from "./toleranceWords";
import { findReading, verifyPlace, withReading } from "./verifyReadings";

/** Something to be read with a figure: what it should be, and the field for what it is. */
export function GateReading({ form, check }: { form: FinsForm; check: VerifyCheck }) {
  const { reader } = useSettings();
  const { fins, edit } = form;
  // Of a reading with two figures the first waits here for the second: a file holds whole readings only.
  const [waiting, setWaiting] = useState<Readonly<Record<string, string>> | null>(null);
  const place = verifyPlace(check);
  if (place === null) return null;
  const { at, entry } = findReading(fins.verify, place);
  const values = waiting ?? entry;
  const type = (field: string, text: string): void => {
    const next = { ...values, [field]: text };
    const isWhole = place.fields.every((each) => (next[each.field] ?? "").trim() !== "");
    setWaiting(isWhole ? null : next);
    edit(["fins", "verify"], withReading(fins.verify, place, next));
  };
  return (
    <fieldset className="reading">
      <legend>{checkName(check, reader)}</legend>
      <StateWord check={check} />
      <div className="fields">
        {place.fields.map(({ field, dimension, reading }) => {
          const target = readingOf(check, reading);
          return (
            <TargetField
              key={field}
              target={target === null ? null : <Amount of={target.of} why={target.why.of} />}
              label={readingWords(reading, reader)}
              value={values[field]}
              dimension={dimension}
              problem={at === -1 ? undefined : problemAt(form, ["verify", place.list, at, field])}
              onType={(text) => type(field, text)}
            />
          );
        })}
      </div>
      <Allowed check={check} />
    </fieldset>
  );
}

/** How near it must come; of two sides, how much they may differ and do. */
function Allowed({ check }: { check: VerifyCheck }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const differ = readingOf(check, "differ");
  if (differ === null) {
    const [first] = [...check.lengths, ...check.angles];
    const reading = first === undefined ? null : readingOf(check, first.id);
    if (!reading?.within) return null;
    return (
      <p className="quiet">
        <WhyNumber path={reading.why.within}>
          <Fractions text={t`within ${toleranceWords(reading.within, reader)}`} />
        </WhyNumber>
      </p>
    );
  }
  const said = [
    { text: t`left less right ${differ.of}`, why: differ.why.of },
    ...(differ.within === null
      ? []
      : [{ text: t`within ${toleranceWords(differ.within, reader)}`, why: differ.why.within }]),
    ...(differ.read === null ? [] : [{ text: t`read ${differ.read}`, why: differ.why.read }]),
  ];
  return (
    <p className="quiet">
      {said.map(({ text, why }, i) => (
        <Fragment key={why}>
          {i > 0 && ", "}
          <WhyNumber path={why}>
            <Fractions text={text} />
          </WhyNumber>
        </Fragment>
      ))}
    </p>
  );
}
