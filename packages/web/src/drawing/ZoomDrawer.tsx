import { fraction } from "@lapline/engine";
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from "react";
import { useTell } from "../settings/useTell";
import { Drawer } from "../shared/Drawer";
import { followHand, type HandPlace } from "../shared/followHand";
import { SvgTree } from "./SvgTree";
import { type Drawn, PX_PER_MM, useDrawn } from "./useDrawn";
import { useWidthPx } from "./useWidthPx";
import { clampZoom, zoomByKey } from "./zoomSteps";
import "./zoom.css";

interface ZoomDrawerProps extends Drawn {
  close(): void;
}

const KEYS = ["-", "0", "+"] as const;

/** A place of the drawing, as shares of its width and height, and where in the view it is to be seen. */
interface Held {
  readonly share: HandPlace;
  readonly at: HandPlace;
}

/** A drawing over the whole page: larger and smaller by buttons, by + - 0, by two fingers; rolled by arrows and by hand. */
export default function ZoomDrawer({ close, ...drawn }: ZoomDrawerProps) {
  const t = useTell();
  const [view, widthPx] = useWidthPx<HTMLDivElement>();
  const heightPx = view.current?.clientHeight ?? 0;
  const { draw } = drawn;
  const wholePx = useMemo(() => fitWhole(draw, widthPx ?? 0, heightPx), [draw, widthPx, heightPx]);
  const shown = useDrawn(drawn, wholePx);
  const [zoom, setZoom] = useState(1);
  const wanted = useRef(1);
  const held = useRef<Held | null>(null);
  const isPinched = useRef(false);
  /** What lies at a place, the view's middle if none is told, stays there. */
  const set = (next: number, about?: HandPlace): void => {
    const { current } = view;
    if (current === null || next === wanted.current) return;
    // What two fingers took hold of stays theirs, also where an edge kept the drawing from following at first.
    if (!isPinched.current || held.current === null)
      held.current = holdAt(current, about ?? { x: current.clientWidth / 2, y: current.clientHeight / 2 });
    wanted.current = next;
    setZoom(next);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: rolled anew where the drawing became larger or smaller
  useLayoutEffect(() => {
    if (view.current !== null && held.current !== null) rollTo(view.current, held.current);
    if (!isPinched.current) held.current = null;
  }, [zoom]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what it calls reads the newest by itself
  useEffect(() => {
    const { current } = view;
    if (current === null) return;
    const roll = (right: number, downwards: number): void =>
      current.scrollBy({ left: -right, top: -downwards, behavior: "instant" });
    return followHand(current, {
      drag: roll,
      move: (right, downwards) => {
        if (held.current === null) {
          roll(right, downwards);
          return;
        }
        const { share, at } = held.current;
        held.current = { share, at: { x: at.x + right, y: at.y + downwards } };
        rollTo(current, held.current);
      },
      pinch: (isBegun) => {
        isPinched.current = isBegun;
        if (isBegun) held.current = null;
      },
      zoom: (factor, about) => set(clampZoom(wanted.current * factor), about),
    });
  }, []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: as above
  useEffect(() => {
    const byKey = (event: KeyboardEvent): void => {
      const next = zoomByKey(wanted.current, event.key);
      if (event.ctrlKey || event.metaKey || event.altKey || next === null) return;
      event.preventDefault();
      set(next);
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
              onClick={() => set(zoomByKey(wanted.current, key) ?? 1)}
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

/** The drawing's box in its view, from the view's own corner. */
function boxWithin(view: HTMLElement) {
  const [own, drawing] = [view, view.firstElementChild ?? view].map((each) => each.getBoundingClientRect());
  if (own === undefined || drawing === undefined) throw new Error("the view is there");
  return {
    x: drawing.left - own.left,
    y: drawing.top - own.top,
    width: drawing.width,
    height: drawing.height,
  };
}

function holdAt(view: HTMLElement, at: HandPlace): Held {
  const { x, y, width, height } = boxWithin(view);
  return { share: { x: (at.x - x) / width, y: (at.y - y) / height }, at };
}

function rollTo(view: HTMLElement, { share, at }: Held): void {
  const { x, y, width, height } = boxWithin(view);
  view.scrollBy({
    left: x + share.x * width - at.x,
    top: y + share.y * height - at.y,
    behavior: "instant",
  });
}
