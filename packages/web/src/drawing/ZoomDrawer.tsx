import { fraction } from "@lapline/engine";
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from "react";
import { useTell } from "../settings/useTell";
import { Drawer } from "../shared/Drawer";
import { followHand } from "../shared/followHand";
import { SvgTree } from "./SvgTree";
import { type Drawn, PX_PER_MM, useDrawn } from "./useDrawn";
import { useWidthPx } from "./useWidthPx";
import { clampZoom, middleOf, rolledTo, zoomByKey } from "./zoomSteps";
import "./zoom.css";

interface ZoomDrawerProps extends Drawn {
  close(): void;
}

const KEYS = ["-", "0", "+"] as const;

/** A drawing over the whole page: larger and smaller by buttons, by + - 0, by two fingers; rolled by arrows and by hand. */
export default function ZoomDrawer({ close, ...drawn }: ZoomDrawerProps) {
  const t = useTell();
  const [view, widthPx] = useWidthPx<HTMLDivElement>();
  const heightPx = view.current?.clientHeight ?? 0;
  const { draw } = drawn;
  const wholePx = useMemo(() => fitWhole(draw, widthPx ?? 0, heightPx), [draw, widthPx, heightPx]);
  const shown = useDrawn(drawn, wholePx);
  const [zoom, setZoom] = useState(1);
  const middle = useRef({ x: 0.5, y: 0 });
  const set = (next: (zoom: number) => number): void => {
    const { current } = view;
    if (current !== null) middle.current = { x: middleOf(across(current)), y: middleOf(down(current)) };
    setZoom(next);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: rolled anew where the drawing became larger or smaller
  useLayoutEffect(() => {
    const { current } = view;
    if (current === null) return;
    current.scrollTo({
      left: rolledTo(middle.current.x, across(current)),
      top: rolledTo(middle.current.y, down(current)),
      behavior: "instant",
    });
  }, [zoom]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what it calls reads the newest by itself
  useEffect(() => {
    const { current } = view;
    if (current === null) return;
    const roll = (right: number, downwards: number): void =>
      current.scrollBy({ left: -right, top: -downwards, behavior: "instant" });
    return followHand(current, {
      drag: roll,
      move: roll,
      zoom: (factor) => set((before) => clampZoom(before * factor)),
    });
  }, []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: as above
  useEffect(() => {
    const byKey = (event: KeyboardEvent): void => {
      if (event.ctrlKey || event.metaKey || event.altKey || zoomByKey(1, event.key) === null) return;
      event.preventDefault();
      set((before) => zoomByKey(before, event.key) ?? before);
    };
    // Wherever in the sheet the focus is: nothing is typed there.
    document.addEventListener("keydown", byKey);
    return () => document.removeEventListener("keydown", byKey);
  }, []);
  const names = { "-": t`smaller`, "0": t`all of it`, "+": t`larger` };
  return (
    <Drawer title={drawn.title} isWide close={close}>
      <div className="zoom">
        <div className="zoom-keys">
          {KEYS.map((key) => (
            <button
              key={key}
              type="button"
              aria-keyshortcuts={key}
              onClick={() => set((before) => zoomByKey(before, key) ?? before)}
            >
              {names[key]}
            </button>
          ))}
          <output>{t`${fraction(zoom)}`}</output>
        </div>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: arrows roll it */}
        <section ref={view} className="zoom-view" tabIndex={0} aria-label={t`Drawing, to be rolled`}>
          <div className="sheet-drawing" style={{ width: `${zoom * wholePx}px` }}>
            {shown !== null && <SvgTree node={shown.node} />}
          </div>
        </section>
      </div>
    </Drawer>
  );
}

/** Narrower than this no drawing is made, however high it is. */
const LEAST_PX = 320;

/** The width at which all of a drawing is seen at once, as nearly as its figures keep their size; nought while the room is not known. */
function fitWhole(draw: Drawn["draw"], widthPx: number, heightPx: number): number {
  const tall = widthPx === 0 ? undefined : draw(widthPx / PX_PER_MM)?.heightMm;
  if (tall === undefined) return 0;
  return Math.max(Math.min(widthPx, LEAST_PX), widthPx * Math.min(1, heightPx / (tall * PX_PER_MM)));
}

const across = (view: HTMLElement) => ({
  at: view.scrollLeft,
  seen: view.clientWidth,
  all: view.scrollWidth,
});
const down = (view: HTMLElement) => ({ at: view.scrollTop, seen: view.clientHeight, all: view.scrollHeight });
