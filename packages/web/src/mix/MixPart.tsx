import type { Finding, Plan } from "@lapline/engine";
import type { ReactNode } from "react";
import { PartSection } from "../board/PartSection";
import { isOfShop } from "../shop/isOfShop";
import { CoatCups } from "./CoatCups";
import { GelPoints } from "./GelPoints";
import { MixAir } from "./MixAir";
import { SunTimes } from "./SunTimes";

/** Stands elsewhere in the part: beside the crossed cup, under each cup's clock, over the air that it would take. */
const PLACED = ["mix.no-dose", "mix.heat", "mix.vapour"];
const isPlaced = (finding: Finding) => PLACED.includes(finding.code) || isOfShop(finding);

/** Cups in the order they are used: what goes in, how long there is, and when the film is ready for what comes next; over them the shop's form. */
export function MixPart({ plan, children }: { plan: Plan; children: ReactNode }) {
  const { mix } = plan;
  return (
    <PartSection id="mix" findings={plan.findings} placed={isPlaced}>
      {children}
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
