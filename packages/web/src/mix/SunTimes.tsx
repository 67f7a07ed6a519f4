import { duration, type Plan } from "@lapline/engine";
import { useTell } from "../settings/useTell";
import { Amount } from "../shared/Amount";

type MixResin = NonNullable<Plan["mix"]>["resins"][number];

const TIMES = ["exposureLowS", "exposureS", "exposureHighS"] as const;

/** How long a sunlight-cured laminate lies in the sun, by the day's UV index. */
export function SunTimes({ resin: { id, name, exposures } }: { resin: MixResin }) {
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
        {exposures.map((exposure, i) => (
          <tr key={exposure.uvIndex}>
            <th scope="row">{exposure.uvIndex}</th>
            {TIMES.map((key) => (
              <td key={key}>
                <Amount of={duration(exposure[key])} why={`mix.resins[${id}].exposures[${i}].${key}`} />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
