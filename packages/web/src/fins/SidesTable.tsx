import { length } from "@lapline/engine";
import { finName, showQuantity, tell, tellText } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { TapeAmount } from "../shared/TapeAmount";
import type { Finset } from "./FinsForm";

type Compared = Finset["sidesCompared"][number];
type Pair = Compared["pairs"][number];

/** Closer than this a mark stays where it is: a pencil line is wider. */
export const STAYS_M = 0.0001;

/** For each pair, what the three rules come to: from the stringer, from its own rail, and how far each mark would move. */
export function SidesTable({ finset }: { finset: Finset }) {
  const { reader } = useSettings();
  const t = useTell();
  const { sidesCompared, sides, pairs } = finset;
  if (pairs.length === 0) return null;
  return (
    <div className="pair">
      {pairs.map(({ id }) => (
        <table key={id} className="sides">
          <caption>{t`${finName(id, reader)}, by each rule`}</caption>
          <thead>
            <tr>
              <th scope="col">{t`rule`}</th>
              <td />
              <th scope="col">{t`from stringer`}</th>
              <th scope="col">{t`from rail`}</th>
              <th scope="col">{t`would move`}</th>
            </tr>
          </thead>
          {sidesCompared.map((compared) => (
            <RuleRows
              key={compared.id}
              rule={compared.id}
              pair={compared.pairs.find((pair) => pair.id === id)}
              isInForce={compared.id === sides}
            />
          ))}
        </table>
      ))}
    </div>
  );
}

interface RuleRowsProps {
  readonly rule: Compared["id"];
  readonly pair: Pair | undefined;
  readonly isInForce: boolean;
}

function RuleRows({ rule, pair, isInForce }: RuleRowsProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  if (pair === undefined) return null;
  const at = `finset.sidesCompared[${rule}].pairs[${pair.id}]`;
  return (
    <tbody className={isInForce ? "in-force" : undefined}>
      <tr>
        <th scope="rowgroup" rowSpan={2}>
          {tellText(rule, reader)}
        </th>
        <th scope="row">{t`left`}</th>
        <td>
          <TapeAmount ofM={pair.leftFromStringerM} why={`${at}.leftFromStringerM`} />
        </td>
        <td>
          <TapeAmount ofM={pair.leftFromRailM} why={`${at}.leftFromRailM`} />
        </td>
        <td>{isInForce ? t`in force` : <Move ofM={pair.leftMovesM} />}</td>
      </tr>
      <tr>
        <th scope="row">{t`right`}</th>
        <td>
          <TapeAmount ofM={pair.rightFromStringerM} why={`${at}.rightFromStringerM`} />
        </td>
        <td>
          <TapeAmount ofM={pair.rightFromRailM} why={`${at}.rightFromRailM`} />
        </td>
        <td>{isInForce ? "" : <Move ofM={pair.rightMovesM} />}</td>
      </tr>
    </tbody>
  );
}

/** In millimetres in both systems: nobody reads half a millimetre off an inch tape. */
function Move({ ofM }: { ofM: number }) {
  const { reader } = useSettings();
  const t = tell(reader);
  if (Math.abs(ofM) < STAYS_M) return t`stays`;
  return (
    showQuantity(length(Math.abs(ofM), "fine"), { ...reader, units: "mm" }) +
    (ofM > 0 ? ` ${t`outward`}` : ` ${t`inward`}`)
  );
}
