import { fraction, length } from "@lapline/engine";
import type { NestOrder } from "@lapline/nest";
import { layWords, type RollLay, rollDrawings, tell } from "@lapline/present";
import { useCallback } from "react";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { useSettings } from "../settings/Settings";
import { useNest } from "./useNest";

/** The search for a shorter lay of one roll: a button, its progress, and what came of it. */
export function NestView({ order }: { order: NestOrder }) {
  const { reader } = useSettings();
  const { state, start, stop } = useNest(order);
  const t = tell(reader);
  return (
    <div className="nest">
      {state.kind === "running" ? (
        <p className="nest-running">
          <progress
            aria-label={t`Search of ${order.cloth}`}
            value={state.progress?.made ?? 0}
            max={state.progress?.of ?? 1}
          />
          <span>
            {state.progress === null
              ? t`Beginning`
              : t`${fraction(state.progress.made / state.progress.of)} looked through, shortest so far ${length(state.progress.best.lengthM)}`}
          </span>
          <button type="button" onClick={stop}>{t`Stop`}</button>
        </p>
      ) : (
        <p>
          <button type="button" onClick={start}>{t`Look for the shortest roll of ${order.cloth}`}</button>
        </p>
      )}
      <div role="status">
        {state.kind === "failed" && <p>{t`The search broke off. The cuts above hold.`}</p>}
        {state.kind === "done" && (
          <>
            {!state.isWhole && <p>{t`Stopped early: the best so far.`}</p>}
            {layWords(state.lay, reader).map((sentence) => (
              <p key={sentence}>{sentence}</p>
            ))}
            <p className="quiet">{t`For pieces cut to their flat shapes; nothing hangs over to trim.`}</p>
          </>
        )}
      </div>
      {state.kind === "done" && <LayDrawing lay={state.lay} title={t`Shortest lay of ${order.cloth}`} />}
    </div>
  );
}

/** A lay as wide as its place. */
export function LayDrawing({ lay, title }: { lay: RollLay; title: string }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const draw = useCallback((widthMm: number) => rollDrawings(lay, { reader, widthMm })[0], [lay, reader]);
  return (
    <SheetDrawing title={title} desc={t`How the pieces of cloth lie on their rolls.`} draw={draw} zooms />
  );
}
