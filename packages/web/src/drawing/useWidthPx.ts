import { type RefObject, useLayoutEffect, useRef, useState } from "react";

/** What a sheet of A4 has between its margins: 186 mm, in CSS pixels. */
const PAPER_PX = 703;

/** The width of an element in CSS pixels, known before the first paint and followed from then on; null until then. On paper it is the paper's. */
export function useWidthPx<T extends HTMLElement>(): readonly [RefObject<T | null>, number | null] {
  const ref = useRef<T>(null);
  const [widthPx, setWidthPx] = useState<number | null>(null);
  useLayoutEffect(() => {
    const element = ref.current;
    if (element === null) return;
    const measure = (): void => setWidthPx(Math.floor(element.clientWidth));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    // A drawing is made anew for paper, so that its figures are as large there.
    const toPaper = (): void => setWidthPx((widthPx) => Math.min(widthPx ?? PAPER_PX, PAPER_PX));
    window.addEventListener("beforeprint", toPaper);
    window.addEventListener("afterprint", measure);
    return () => {
      observer.disconnect();
      window.removeEventListener("beforeprint", toPaper);
      window.removeEventListener("afterprint", measure);
    };
  }, []);
  return [ref, widthPx];
}
