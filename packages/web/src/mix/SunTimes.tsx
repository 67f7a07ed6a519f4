import { duration, type Plan } from "@lapline/engine";
import { useTell } from "../settings/useTell";
import { Amount } from "../shared/Amount";

type MixResin = NonNullable<Plan["mix"]>["resins"][number];

/** How long a sunlight-cured laminate lies in the sun, by the day's UV index. */
export function SunTimes({ resin: { name, exposures } }: { resin: MixResin }) {
  const t = useTell();
  if (exposures.length === 0) return null;
  return (
    <table>
      <caption>{t`${name} in the sun`}</caption>
      <thead>
        <tr>
          <th scope="col">{t`UV index`}</th>
          <th scope="col">{t`early`}</th>
          <th scope="col">{t`about`}</th>
          <th scope="col">{t`late`}</th>
        </tr>
      </thead>
      <tbody>
        {exposures.map(({ uvIndex, exposureS, exposureLowS, exposureHighS }) => (
          <tr key={uvIndex}>
            <th scope="row">{uvIndex}</th>
            {[exposureLowS, exposureS, exposureHighS].map((timeS) => (
              <td key={timeS}>
                <Amount of={duration(timeS)} />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
