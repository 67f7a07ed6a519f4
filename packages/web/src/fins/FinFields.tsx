import type { FinFile } from "@lapline/contract";
import { finName } from "@lapline/present";
import { FindingTape } from "../board/FindingTape";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Choice } from "../shared/Choice";
import { Said } from "../shared/Said";
import { BoxFields } from "./BoxFields";
import { FinsField, problemAt } from "./FinsField";
import type { FinsForm } from "./FinsForm";
import type { NumberedFinding } from "./findingsAt";
import { statedTail } from "./statedTail";
import { ToeFields } from "./ToeFields";
import { WorthView } from "./WorthView";

interface FinFieldsProps {
  readonly form: FinsForm;
  readonly index: number;
  readonly fin: FinFile;
  readonly numbered: readonly NumberedFinding[];
}

const RAIL_BY = ["square-to-centreline", "square-to-rail"] as const;

/** One fin of the set: where it stands, its toe in every form, its cant, its box, and what was found at it. */
export function FinFields({ form, index, fin, numbered }: FinFieldsProps) {
  const { reader } = useSettings();
  const t = useTell();
  const { edit, plan } = form;
  const at = ["set", index];
  const mark = plan.finset?.marks.find((each) => each.fin === fin.fin);
  const whole = problemAt(form, at) ?? problemAt(form, [...at, "fin"]);
  return (
    <fieldset className="fin">
      <legend>{finName(fin.fin, reader)}</legend>
      {whole !== undefined && (
        <p className="field-problem">
          <Said says={whole} />
        </p>
      )}
      {numbered
        .filter((each) => each.fin === fin.fin)
        .map(({ finding, number }) => (
          <FindingTape key={number} finding={finding} number={number} />
        ))}
      <div className="fields">
        <FinsField
          form={form}
          label={t`from the ${statedTail(form)}`}
          path={[...at, "fromTail"]}
          value={fin.fromTail}
        />
        {fin.fromRail !== undefined && (
          <>
            <FinsField form={form} label={t`from the rail`} path={[...at, "fromRail"]} value={fin.fromRail} />
            <Choice
              label={t`square to`}
              value={fin.fromRailBy ?? "square-to-centreline"}
              choices={RAIL_BY}
              names={{ "square-to-centreline": t`the line`, "square-to-rail": t`the rail` }}
              choose={(value) => edit(["fins", ...at, "fromRailBy"], value)}
            />
          </>
        )}
        <FinsField form={form} label={t`base`} path={[...at, "base"]} value={fin.base} />
        <FinsField
          form={form}
          label={t`cant`}
          path={[...at, "cant"]}
          value={fin.cant}
          dimension="angle"
          optional
        />
      </div>
      {fin.fromRail !== undefined && <ToeFields form={form} index={index} fin={fin} mark={mark} />}
      {mark !== undefined && mark.side !== "centre" && <WorthView mark={mark} />}
      <BoxFields form={form} index={index} fin={fin} />
      <button type="button" className="plain" onClick={() => edit(["fins", ...at], undefined)}>
        {t`remove`}
        <span className="unseen"> {t`the ${finName(fin.fin, reader)} fin`}</span>
      </button>
    </fieldset>
  );
}
