import type { Finding, Plan } from "@lapline/engine";
import { PartSection } from "../board/PartSection";
import { CoatCups } from "./CoatCups";
import { GelPoints } from "./GelPoints";
import { MixAir } from "./MixAir";
import { SunTimes } from "./SunTimes";

/** Stands elsewhere in the part: beside the crossed cup, under each cup's clock, over the air that it would take. */
const PLACED = ["mix.no-dose", "mix.heat", "mix.vapour"];
const isPlaced = ({ code }: Finding) => PLACED.includes(code);

/** Cups in the order they are used: what goes in, how long there is, and when the film is ready for what comes next. */
export function MixPart({ plan }: { plan: Plan }) {
  const { mix } = plan;
  return (
    <PartSection id="mix" findings={plan.findings} placed={isPlaced}>
      {mix !== null && (
        <>
          {mix.resins.map((resin) => (
            <GelPoints key={resin.id} resin={resin} />
          ))}
          <ol className="coats">
            {mix.coats.map((coat) => (
              <li key={coat.id}>
                <CoatCups coat={coat} mix={mix} findings={plan.findings} />
              </li>
            ))}
          </ol>
          {mix.resins.map((resin) => (
            <SunTimes key={resin.id} resin={resin} />
          ))}
          <MixAir mix={mix} findings={plan.findings} />
        </>
      )}
    </PartSection>
  );
}
