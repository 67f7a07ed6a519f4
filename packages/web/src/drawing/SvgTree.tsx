import type { SvgNode } from "@lapline/present";
import { createElement, type ReactNode, useLayoutEffect, useRef } from "react";
import { patchSvg } from "./patchSvg";

/** A drawing on the page. Its elements are made and changed by hand: there are hundreds, and with a key most stay as they are. */
export function SvgTree({ node }: { node: SvgNode }): ReactNode {
  const ref = useRef<SVGSVGElement>(null);
  const shown = useRef<SvgNode | null>(null);
  useLayoutEffect(() => {
    if (ref.current !== null) patchSvg(ref.current, shown.current, node);
    shown.current = node;
  }, [node]);
  return createElement("svg", { ref });
}
