import { duration, length, type Plan } from "@lapline/engine";
import { tell } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";

/** The papers as the rungs of a ladder, the coarsest at the foot; a rung that stays off the rails is shorter. */
export function GritLadder({ sanding }: { sanding: NonNullable<Plan["sanding"]> }) {
  const t = tell(useSettings().reader);
  return (
    <ol className="ladder" reversed>
      {sanding.grits.toReversed().map((grit) => (
        <li key={grit.id} className={grit.onEdges ? "rung" : "rung rung-short"}>
          <b>{grit.grit}</b>
          <span className="quiet">
            {grit.us === null ? "" : `${t`as US ${grit.us}`}, `}
            {grit.wet ? t`wet, all over` : grit.onEdges ? t`dry, rails too` : t`dry, flats only`}
          </span>
          <span>
            {t`takes`} <Amount of={length(grit.removesM)} why={`sanding.grits[${grit.id}].removesM`} />
          </span>
          <span>
            <Amount of={duration(grit.handsOnS)} why={`sanding.grits[${grit.id}].handsOnS`} />
            {grit.railsS > 0 && (
              <span className="quiet">
                {" "}
                {t`rails`} <Amount of={duration(grit.railsS)} why={`sanding.grits[${grit.id}].railsS`} />
              </span>
            )}
          </span>
          <span className="quiet">
            {grit.discs > 0 && t`discs: ${grit.discs} `}
            {grit.sheets > 0 && t`sheets: ${grit.sheets}`}
          </span>
        </li>
      ))}
    </ol>
  );
}
