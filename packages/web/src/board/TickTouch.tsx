import type { Plan } from "@lapline/engine";
import type { Drawing } from "@lapline/present";
import { type MouseEvent, type ReactNode, useRef } from "react";
import { flushSync } from "react-dom";
import { goToField } from "../pad/nextField";
import { usePad } from "../pad/PadContext";
import { placeOnBoard, readingAt } from "./readingAt";

/** A thumb hits a tick when it is no further off than this. */
const REACH_PX = 24;

interface TickTouchProps {
  readonly plan: Plan;
  /** The drawing within, made as for it. */
  readonly draw: (widthMm: number) => Drawing | null;
  readonly children: ReactNode;
}

/**
 * The drawing of the board with its stations to be touched: the reading that was taken there comes under the cursor, and the pad
 * with it. By keys the same readings stand in the table.
 */
export function TickTouch({ plan, draw, children }: TickTouchProps) {
  const place = useRef<HTMLDivElement>(null);
  const pad = usePad();
  const touch = (event: MouseEvent): void => {
    const svg = place.current?.querySelector("svg");
    if (svg === null || svg === undefined || !svg.contains(event.target as Node)) return;
    const at = touchedReading(plan, { svg, draw, xPx: event.clientX, yPx: event.clientY });
    if (at === null) return;
    // After the pad's table key a tick brings it back, before the cursor comes.
    if (window.matchMedia("(pointer: coarse)").matches) flushSync(() => pad?.turn(true));
    const field = document.querySelector<HTMLElement>(`[data-at="${CSS.escape(at)}"]`);
    if (field !== null) goToField(field);
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the table has the same for keys
    // biome-ignore lint/a11y/useKeyWithClickEvents: the table has the same for keys
    <div ref={place} onClick={touch}>
      {children}
    </div>
  );
}

interface Touch {
  readonly svg: SVGSVGElement;
  readonly draw: TickTouchProps["draw"];
  readonly xPx: number;
  readonly yPx: number;
}

function touchedReading(plan: Plan, { svg, draw, xPx, yPx }: Touch): string | null {
  const { left, top, width } = svg.getBoundingClientRect();
  const widthMm = svg.viewBox.baseVal.width;
  const drawing = draw(widthMm);
  if (drawing === null || width === 0) return null;
  const mmPerPx = widthMm / width;
  const { x, y } = drawing.frame.alongMmPerM;
  const reachM = (REACH_PX * mmPerPx) / Math.hypot(x, y);
  return readingAt(plan, placeOnBoard(drawing, (xPx - left) * mmPerPx, (yPx - top) * mmPerPx), reachM);
}
