import type { FinFile } from "@lapline/contract";
import { finName, type Reader, tell, tellText } from "@lapline/present";
import { QuantityField } from "../board/QuantityField";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Choice } from "../shared/Choice";
import { Said } from "../shared/Said";
import { problemAt } from "./FinsField";
import type { FinMark, FinsForm } from "./FinsForm";
import { TOE_FORMS, toeTexts } from "./toeTexts";

interface ToeFieldsProps {
  readonly form: FinsForm;
  readonly index: number;
  readonly fin: FinFile;
  readonly mark: FinMark | undefined;
}

const NO_FIN = "none";

/** Toe in every form at once: whichever is typed becomes the one it is stated by, and the others follow. */
export function ToeFields({ form, index, fin, mark }: ToeFieldsProps) {
  const t = useTell();
  const { units, reader } = useSettings();
  const { fins, edit } = form;
  const at = ["set", index, "toe"];
  const texts = toeTexts(fin.toe, mark, units);
  const others = fins.set.flatMap((each, i) =>
    i === index || each.fromRail === undefined ? [] : [each.fin],
  );
  const whole = problemAt(form, at) ?? problemAt(form, [...at, "meets"]);
  return (
    <fieldset className="toe">
      <legend>{t`Toe, ${statedBy(fin.toe, reader)}; type it in any form`}</legend>
      <div className="fields">
        {TOE_FORMS.map(({ id, label, dimension }) => (
          <div key={id} className={fin.toe?.[id] === undefined ? undefined : "stated"}>
            <QuantityField
              label={tellText(label, reader)}
              value={texts[id]}
              dimension={dimension}
              problem={problemAt(form, [...at, id])}
              onType={(text) => edit(["fins", ...at], { [id]: text })}
            />
          </div>
        ))}
        {others.length > 0 && (
          <Choice
            label={t`meets line of`}
            value={fin.toe?.meets ?? NO_FIN}
            choices={[NO_FIN, ...others]}
            names={Object.fromEntries(others.map((other) => [other, finName(other, reader)]))}
            choose={(other) =>
              edit(["fins", ...at], other === NO_FIN ? { angle: texts.angle } : { meets: other })
            }
          />
        )}
      </div>
      {whole !== undefined && (
        <p className="field-problem">
          <Said says={whole} />
        </p>
      )}
    </fieldset>
  );
}

/** The form that the toe is stated in; the others are worked out from it. */
function statedBy(toe: FinFile["toe"], reader: Reader): string {
  const t = tell(reader);
  const form = TOE_FORMS.find(({ id }) => toe?.[id] !== undefined);
  if (form !== undefined) return t`stated by ${form.stated}`;
  return toe?.meets === undefined
    ? t`none stated`
    : t`stated by the line of the ${finName(toe.meets, reader)} fins`;
}
