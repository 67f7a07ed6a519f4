import { lazy, Suspense, useState } from "react";
import { useTell } from "../settings/useTell";
import type { SolidProps } from "./SolidProps";
import "./solid.css";

const load = () => import("./SolidScreen");
const SolidScreen = lazy(load);

/** The way to the solid: its program is fetched when a reader reaches for it, and not before. */
export function SolidFold(props: SolidProps) {
  const t = useTell();
  const [isOpen, setOpen] = useState(false);
  if (props.plan.shape === null) return null;
  const names = {
    difference: t`The solid: left against right in colour`,
    skin: t`The solid: thickness of the skin in colour`,
    film: t`The solid: film left in colour`,
  };
  return (
    <div className="solid-fold">
      <button
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
