import { count, length, type Plan } from "@lapline/engine";
import { sandRules, tell } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { Figures } from "../shared/Figures";

/** One paper: where it goes, in how many passes, and what it takes. */
export function PaperCard({ plan: { sanding }, grit: name }: { plan: Plan; grit: string }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const grit = sanding?.grits.find(({ grit: each }) => each === name);
  if (grit === undefined) return null;
  const [, ...others] = sandRules(reader);
  return (
    <>
      <p className="as-it-lies">
        {grit.wet ? t`wet, all over` : grit.onEdges ? t`dry, rails too` : t`dry, flats only`}
        {grit.us !== null && `, ${t`as US ${grit.us}`}`}
      </p>
      <Figures
        entries={[
          { name: t`passes`, of: count(grit.passes), why: `sanding.grits[${grit.id}].passes` },
          { name: t`takes`, of: length(grit.removesM), why: `sanding.grits[${grit.id}].removesM` },
        ]}
      />
      <p>{sandRules(reader)[0]}</p>
      {others.slice(0, 2).map((rule) => (
        <p key={rule}>{rule}</p>
      ))}
    </>
  );
}
