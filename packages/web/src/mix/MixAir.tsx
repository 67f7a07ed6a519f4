import { type Finding, flow, type Plan } from "@lapline/engine";
import { tellText, worstVapour } from "@lapline/present";
import { FindingTape } from "../board/FindingTape";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Amount } from "../shared/Amount";

interface MixAirProps {
  readonly mix: NonNullable<Plan["mix"]>;
  readonly findings: readonly Finding[];
}

/** What the worst coat gives off about its gel, and the fresh air that it would take for each published limit. */
export function MixAir({ mix, findings }: MixAirProps) {
  const { reader } = useSettings();
  const t = useTell();
  const worst = worstVapour(mix);
  if (worst === null) return null;
  const { vapour } = worst;
  const told = findings.find(({ code }) => code === "mix.vapour");
  return (
    <div className="mix-air">
      <h3>{t`Air about the gel`}</h3>
      {told !== undefined && <FindingTape finding={told} />}
      <table>
        <caption>{t`Fresh air that would keep the shop at a published limit`}</caption>
        <thead>
          <tr>
            <th scope="col">{t`limit`}</th>
            <th scope="col">{t`ppm`}</th>
            <th scope="col">{t`fresh air`}</th>
          </tr>
        </thead>
        <tbody>
          {vapour.needs.map((need) => (
            <tr key={need.id}>
              <th scope="row">{tellText(need.name, reader)}</th>
              <td>{need.limitPpm}</td>
              <td>
                <Amount
                  of={flow(need.freshAirM3S)}
                  why={`mix.coats[${worst.id}].vapour.needs[${need.id}].freshAirM3S`}
                />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="quiet">
        {t`Reckoned high, on all the resin mixed, for the air; the styrene that Glass counts is what the coat on the board loses.`}
      </p>
    </div>
  );
}
