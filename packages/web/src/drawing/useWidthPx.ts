import { type RefObject, useLayoutEffect, useRef, useState } from "react";

/** The width of an element in CSS pixels, known before the first paint and followed from then on; null until then. */
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
    return () => observer.disconnect();
  }, []);
  return [ref, widthPx];
}
