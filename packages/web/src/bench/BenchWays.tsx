import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { moveTo } from "../shared/usePath";
import { wallTime } from "../shared/wallTime";
import type { BenchCard } from "./BenchCard";
import type { BenchHand } from "./BenchHand";
import { CheckMark } from "./CheckMark";
import { cardTitle } from "./cardTitle";
import type { ChosenStep } from "./chooseStep";
import { shortTitle } from "./shortTitle";

interface BenchWaysProps {
  readonly hand: BenchHand;
  readonly chosen: ChosenStep;
  readonly cards: readonly BenchCard[];
  readonly card: BenchCard;
  readonly bench: string;
  go(card: string): void;
}

/** Back and on at the foot of the screen; on the last screen of a step its check mark. */
export function BenchWays({ hand, chosen, cards, card, bench, go }: BenchWaysProps) {
  const t = useTell();
  const { reader } = useSettings();
  const { step, before, after } = chosen;
  const { plan } = hand.draft.good;
  const at = cards.findIndex(({ id }) => id === card.id);
  const [last, next] = [cards[at - 1], cards[at + 1]];
  const done = () => hand.addEntry({ kind: "done", step: step.id, at: wallTime(new Date()) });
  return (
    <nav className="bench-ways" aria-label={t`Screens`}>
      <button
        type="button"
        className="way-back"
        aria-label={t`back`}
        disabled={last === undefined && before === null}
        onClick={() => (last === undefined ? before && moveTo(`${bench}/${before.id}`) : go(last.id))}
      >
        ‹
      </button>
      {next !== undefined ? (
        <button type="button" className="way-on" onClick={() => go(next.id)}>
          {cardTitle(next, step, plan, reader)}
          <span aria-hidden="true">&nbsp;›</span>
        </button>
      ) : !step.done ? (
        <button type="button" className="way-done" onClick={done}>
          <CheckMark />
          {t`Done`}
        </button>
      ) : after === null ? (
        <button type="button" className="way-on" onClick={() => moveTo(bench.replace(/\/bench$/, ""))}>
          {t`to the board`}
        </button>
      ) : (
        <button type="button" className="way-on" onClick={() => moveTo(`${bench}/${after.id}`)}>
          {shortTitle(after, reader).name}
          <span aria-hidden="true">&nbsp;›</span>
        </button>
      )}
    </nav>
  );
}
