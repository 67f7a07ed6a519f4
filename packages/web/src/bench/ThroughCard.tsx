import { repairTitle, tell, worstSentence } from "@lapline/present";
import { ThroughForm } from "../sand/ThroughForm";
import { useSettings } from "../settings/Settings";
import { Fractions } from "../shared/Fractions";
import type { BenchHand } from "./BenchHand";

/** Where the paper went through, or a low spot stayed shiny: written down here, and its repair is in the steps at once. */
export function ThroughCard({ hand }: { hand: BenchHand }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const { file, good } = hand.draft;
  const { sanding, repairs } = good.plan;
  const worst = sanding === null ? null : worstSentence(sanding, reader);
  return (
    <>
      {worst !== null && (
        <p>
          <Fractions text={worst} />
        </p>
      )}
      <p>{t`Nothing to write down? Then go on.`}</p>
      <ul className="told">
        {repairs?.map((repair) => (
          <li key={repair.id}>
            <Fractions text={repairTitle(repair, reader)} />
            {repair.done && ` (${t`Done.`})`}
          </li>
        ))}
      </ul>
      <ThroughForm file={file} edit={hand.edit} />
    </>
  );
}
