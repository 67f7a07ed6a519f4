import type { BoardFile } from "@lapline/contract";
import { useTell } from "../settings/useTell";

/** While there is no outline yet: what to do with the tape, and how far the readings are. */
export function MeasureFirst({ file }: { readonly file: BoardFile }) {
  const t = useTell();
  const { stations } = file.survey;
  const read = stations.filter(
    ({ left, right, width }) => width !== undefined || (left !== undefined && right !== undefined),
  ).length;
  return (
    <div className="says measure-first">
      <p>
        <b>{t`To be measured: ${read} of ${stations.length} stations read.`}</b>
      </p>
      <ol>
        <li>{t`Say nose and tail as they are shaped, and the tail's width.`}</li>
        <li>{t`Lay the tape along the bottom from the tail and mark each place square across.`}</li>
        <li>
          {t`At each place read left and right from the stringer to the rail, bottom up and nose away: the surfer's left is on your right hand. Then the thickness, and the gap to a straightedge along the stringer.`}
        </li>
      </ol>
      <p>
        {t`The outline is drawn as soon as enough is read; places can be changed, added and removed. Until then the order of work below stands without its amounts.`}
      </p>
    </div>
  );
}
