import { lazy, Suspense, useEffect, useRef, useState } from "react";
import { useTell } from "../settings/useTell";
import type { SolidProps } from "./SolidProps";
import "./solid.css";

const load = () => import("./SolidScreen");
const SolidScreen = lazy(load);

/** Whoever only scrolls by does not wait for it. */
const AFTER_SEEN_MS = 500;

/** The way to the solid: its program is fetched when the way to it comes into sight, and not before. */
export function SolidFold(props: SolidProps) {
  const t = useTell();
  const [isOpen, setOpen] = useState(false);
  const button = useRef<HTMLButtonElement>(null);
  // A finger gives no notice before it touches.
  useEffect(() => {
    if (button.current === null) return;
    const sight = new IntersectionObserver((seen) => {
      if (!seen.some(({ isIntersecting }) => isIntersecting)) return;
      sight.disconnect();
      setTimeout(() => void load(), AFTER_SEEN_MS);
    });
    sight.observe(button.current);
    return () => sight.disconnect();
  }, []);
  if (props.plan.shape === null) return null;
  const names = {
    difference: t`The solid: left against right in colour`,
    skin: t`The solid: thickness of the skin in colour`,
    film: t`The solid: film left in colour`,
  };
  return (
    <div className="solid-fold">
      <button
        ref={button}
        type="button"
        aria-expanded={isOpen}
        onPointerEnter={() => void load()}
        onFocus={() => void load()}
        onClick={() => setOpen(!isOpen)}
      >
        {isOpen ? t`Close the solid` : names[props.first]}
      </button>
      {isOpen && (
        <Suspense fallback={<div className="solid-room" aria-busy="true" />}>
          <SolidScreen {...props} />
        </Suspense>
      )}
    </div>
  );
}
