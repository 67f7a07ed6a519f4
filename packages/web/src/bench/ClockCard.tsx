import { duration, fraction } from "@lapline/engine";
import { tell } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { wallTime } from "../shared/wallTime";
import type { BenchHand } from "./BenchHand";
import type { ClockMoment } from "./ClockMoment";
import { atWords, momentWord } from "./clockWords";
import { Fingertip } from "./Fingertip";
import { listClock } from "./listClock";

interface ClockCardProps {
  readonly hand: BenchHand;
  readonly coatId: string;
  readonly nowMs: number;
  go(card: string): void;
}

/** The wet clock of one coat: every time in the order in which they come, and the fingertip that moves them. */
export function ClockCard({ hand, coatId, nowMs, go }: ClockCardProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  const coat = hand.draft.good.plan.mix?.coats.find(({ id }) => id === coatId);
  if (coat === undefined) return null;
  const moments = listClock(coat);
  if (moments.length === 0)
    return (
      <>
        <p>{t`The clock starts when the hardener goes in.`}</p>
        <button type="button" onClick={() => go("cup-1")}>{t`to the cup`}</button>
      </>
    );
  const next = moments.find(({ atMs }) => atMs > nowMs);
  return (
    <>
      <ol className="moments">
        {moments.map((moment) => (
          <Moment key={moment.kind} moment={moment} nowMs={nowMs} isNext={moment === next} />
        ))}
      </ol>
      {coat.paceRatio !== null && (
        <p>{t`By fingertip it takes ${fraction(coat.paceRatio)} of the model's time.`}</p>
      )}
      <Fingertip
        hand={hand}
        coat={coatId}
        touch={(feels) => hand.addEntry({ kind: "touched", coat: coatId, feels, at: wallTime(new Date()) })}
      />
    </>
  );
}

interface MomentProps {
  readonly moment: ClockMoment;
  readonly nowMs: number;
  readonly isNext: boolean;
}

function Moment({ moment, nowMs, isNext }: MomentProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  const { kind, atMs, lowMs, highMs, untilMs } = moment;
  const at = (timeMs: number) => atWords(timeMs, nowMs, reader);
  const isCome = atMs <= nowMs;
  const isOver = untilMs !== null && untilMs <= nowMs;
  return (
    <li className={isNext ? "moment moment-next" : isCome ? "moment moment-come" : "moment"}>
      <b className="moment-word">{momentWord(kind, reader)}</b>
      <b className="moment-at">{at(atMs)}</b>
      <span className="moment-left">
        {isOver ? t`over` : isCome ? t`has come` : t`in ${duration((atMs - nowMs) / 1000)}`}
      </span>
      {(lowMs !== null || untilMs !== null) && (
        <span className="moment-band">
          {!isCome && lowMs !== null && highMs !== null && t`${at(lowMs)} to ${at(highMs)}`}
          {!isCome && lowMs !== null && highMs !== null && untilMs !== null && "; "}
          {untilMs !== null && t`until ${at(untilMs)}`}
        </span>
      )}
    </li>
  );
}
