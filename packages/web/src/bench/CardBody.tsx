import type { BenchCard } from "./BenchCard";
import type { BenchScreenProps } from "./BenchScreenProps";
import { ClockCard } from "./ClockCard";
import { CupCard } from "./CupCard";
import { CutCard } from "./CutCard";
import { GateCard } from "./GateCard";
import { LayCard } from "./LayCard";
import { MarkCard } from "./MarkCard";
import { PaperCard } from "./PaperCard";
import { PlugCard } from "./PlugCard";
import { StartCard } from "./StartCard";
import { ThroughCard } from "./ThroughCard";
import { WeighCard } from "./WeighCard";

interface CardBodyProps extends BenchScreenProps {
  readonly card: BenchCard;
  /** To another screen of the step. */
  go(card: string): void;
}

/** What a screen of the Bench has below its heading, by its kind. */
export function CardBody({ hand, card, chosen, nowMs, bench, go }: CardBodyProps) {
  const { plan } = hand.draft.good;
  switch (card.kind) {
    case "start":
      return <StartCard plan={plan} step={chosen.step} nowMs={nowMs} bench={bench} />;
    case "cut":
      return <CutCard plan={plan} card={card} />;
    case "lay":
      return <LayCard plan={plan} coat={card.coat} />;
    case "cup":
      return <CupCard key={card.id} hand={hand} card={card} go={go} />;
    case "clock":
      return <ClockCard hand={hand} coatId={card.coat} nowMs={nowMs} go={go} />;
    case "mark":
      return <MarkCard plan={plan} fin={card.fin} end={card.end} />;
    case "plug":
      return <PlugCard plan={plan} />;
    case "gate":
      return <GateCard hand={hand} checks={card.checks} />;
    case "paper":
      return <PaperCard plan={plan} grit={card.grit} />;
    case "through":
      return <ThroughCard hand={hand} />;
    case "weigh":
      return <WeighCard key={card.after} hand={hand} after={card.after} />;
  }
}
