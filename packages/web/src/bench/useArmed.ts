import { useEffect, useState } from "react";
import { armAlarm } from "./alarm";

const TOUCHES = ["pointerdown", "keydown"] as const;

/** Whether the alarm can sound: from the first touch or key on the page on. */
export function useArmed(): boolean {
  const [isArmed, setArmed] = useState(false);
  useEffect(() => {
    const arm = () => setArmed(armAlarm());
    for (const touch of TOUCHES) document.addEventListener(touch, arm, { once: true });
    return () => {
      for (const touch of TOUCHES) document.removeEventListener(touch, arm);
    };
  }, []);
  return isArmed;
}
