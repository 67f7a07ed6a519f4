import { duration, flow, mass, type Plan } from "@lapline/engine";
import { worstVapour } from "@lapline/present";
import { Amount } from "../shared/Amount";

/** What the worst coat gives off about its gel, and the fresh air that it would take for each published limit. */
export function MixAir({ mix }: { mix: NonNullable<Plan["mix"]> }) {
  const worst = worstVapour(mix);
  if (worst === null) return null;
  const { id, vapour } = worst;
  return (
    <div className="mix-air">
      <h3>Air about the gel</h3>
      <p>
        {id.replaceAll("-", " ")} gives off about <Amount of={mass(vapour.styreneKg)} /> of styrene in{" "}
        <Amount of={duration(vapour.overS)} />.
      </p>
      <table>
        <caption>Fresh air that would keep the shop at a published limit</caption>
        <thead>
          <tr>
            <th scope="col">limit</th>
            <th scope="col">ppm</th>
            <th scope="col">fresh air</th>
          </tr>
        </thead>
        <tbody>
          {vapour.needs.map((need) => (
            <tr key={need.id}>
              <th scope="row">{need.name}</th>
              <td>{need.limitPpm}</td>
              <td>
                <Amount of={flow(need.freshAirM3S)} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="quiet">
        Limits differ by country and change. Not a compliance calculation: the safety data sheet, local codes
        and licensed practice decide.
      </p>
    </div>
  );
}
