import { ARRANGEMENTS, BOX_TIMINGS } from "@lapline/engine";
import { FindingTape } from "../board/FindingTape";
import { useTell } from "../settings/useTell";
import { Choice } from "../shared/Choice";
import { arrangementNames } from "./arrangementNames";
import { FinsField } from "./FinsField";
import type { FinsForm } from "./FinsForm";
import { findingsAt } from "./findingsAt";

const ALONG = ["tape", "straight"] as const;
const TAIL_POINTS = ["tips", "crotch"] as const;

/** What holds for the whole set. */
export function SetFields({ form }: { form: FinsForm }) {
  const t = useTell();
  const { fins, plan, edit } = form;
  return (
    <>
      <div className="survey-fields">
        <Choice
          label={t`arrangement`}
          value={fins.arrangement}
          choices={ARRANGEMENTS}
          names={arrangementNames(t)}
          choose={(value) => edit(["fins", "arrangement"], value)}
        />
        <Choice
          label={t`boxes go in`}
          value={fins.boxes ?? "after-fill"}
          choices={BOX_TIMINGS}
          names={{
            "before-glass": t`before the glass`,
            "after-laminate": t`after the laminate`,
            "after-fill": t`after the fill coat`,
            "glassed-on": t`none: glassed on`,
          }}
          choose={(value) => edit(["fins", "boxes"], value)}
        />
        <Choice
          label={t`from the tail by`}
          value={fins.fromTailBy ?? "tape"}
          choices={ALONG}
          choose={(value) => edit(["fins", "fromTailBy"], value)}
        />
        <Choice
          label={t`from the tail's`}
          value={fins.fromTailOf ?? "tips"}
          choices={TAIL_POINTS}
          choose={(value) => edit(["fins", "fromTailOf"], value)}
        />
        <FinsField form={form} label={t`tolerance`} path={["tolerance"]} value={fins.tolerance} optional />
      </div>
      {findingsAt(plan, "fins.tolerance").map((finding) => (
        <FindingTape key={finding.code} finding={finding} />
      ))}
    </>
  );
}
