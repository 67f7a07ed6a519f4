import { type ReactNode, useCallback, useMemo, useState } from "react";
import { afterPress } from "../shared/afterPress";
import { PadContext, type PadHolder } from "./PadContext";
import "./pad.css";

interface PadProviderProps {
  /** Comes up for a mouse and for keys too. */
  readonly isAlwaysOn?: boolean;
  readonly children: ReactNode;
}

/** Gives the fields within it one pad of big keys, at the foot of the screen. */
export function PadProvider({ isAlwaysOn = false, children }: PadProviderProps) {
  const [isOn, turn] = useState(() => isAlwaysOn || window.matchMedia("(pointer: coarse)").matches);
  const [openId, open] = useState<string | null>(null);
  const [place, setPlace] = useState<HTMLElement | null>(null);
  // Its room goes with it; a field that was gone to meanwhile keeps the pad.
  const close = useCallback(() => afterPress(() => open((now) => (now === openId ? null : now))), [openId]);
  const holder = useMemo<PadHolder>(
    () => ({ isOn, hasTable: !isAlwaysOn, openId, place, open, close, turn }),
    [isOn, isAlwaysOn, openId, place, close],
  );
  return (
    <PadContext value={holder}>
      {children}
      <div ref={setPlace} className="pad-place" />
    </PadContext>
  );
}
