import { type ReactNode, useLayoutEffect, useRef } from "react";
import { useSettings } from "../settings/Settings";
import { moveTo, useHash } from "../shared/usePath";
import type { BenchCard } from "./BenchCard";
import type { BenchScreenProps } from "./BenchScreenProps";
import { BenchWays } from "./BenchWays";
import { CardBody } from "./CardBody";
import { cardTitle } from "./cardTitle";
import { DoneLine } from "./DoneLine";
import { listCards } from "./listCards";
import { mixedCups } from "./mixedCups";
import { ShortCautions } from "./ShortCautions";
import { shortTitle } from "./shortTitle";

interface ScreenFoot {
  /** Between the screen and the way on. */
  readonly children: ReactNode;
}

/** One screen of a step: cautions, what it is, its few numbers; the way on and the check mark at the foot. */
export function BenchScreen({ hand, chosen, nowMs, bench, children }: BenchScreenProps & ScreenFoot) {
  const { reader } = useSettings();
  const { step } = chosen;
  const { file, good } = hand.draft;
  const { plan } = good;
  const mixed = step.coat === null ? 0 : mixedCups(file, step.coat).length;
  const cards = listCards(plan, step, mixed);
  const card = findCard(cards, useHash());
  const title = cardTitle(card, step, plan, reader);
  const heading = useRef<HTMLHeadingElement>(null);
  const shown = useRef<string | null>(null);
  useLayoutEffect(() => {
    // Another screen begins at its heading, read aloud too, before any key can come; the first one leaves the cursor where it is.
    if (shown.current !== null && shown.current !== card.id) heading.current?.focus();
    shown.current = card.id;
  }, [card.id]);
  const go = (id: string) => moveTo(`${bench}/${step.id}${id === "start" ? "" : `#${id}`}`);
  return (
    <>
      <main className={`card card-${card.kind}`}>
        {card.kind !== "start" && <ShortCautions step={step} open={() => go("start")} />}
        {card.kind !== "start" && <p className="card-step">{shortTitle(step, reader).name}</p>}
        <h1 ref={heading} tabIndex={-1}>
          {title}
        </h1>
        <CardBody {...{ hand, card, chosen, nowMs, bench, go }} />
        <DoneLine hand={hand} step={step} />
      </main>
      {children}
      <BenchWays {...{ hand, chosen, cards, card, bench, go }} />
    </>
  );
}

/** By its id in the address; a check of the gate leads to the screen that it stands on. */
function findCard(cards: readonly BenchCard[], hash: string): BenchCard {
  const named = cards.find(
    (card) =>
      card.id === hash || (card.kind === "gate" && card.checks.some((check) => `gate-${check}` === hash)),
  );
  return named ?? cards[0] ?? { kind: "start", id: "start" };
}
