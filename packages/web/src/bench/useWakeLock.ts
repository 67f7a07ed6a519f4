import { useEffect, useState } from "react";

/** Keeps the screen awake while the page is in sight, where the browser allows it; gives whether it does. */
export function useWakeLock(): boolean {
  const [isAwake, setAwake] = useState(false);
  useEffect(() => {
    let isOpen = true;
    let lock: WakeLockSentinel | null = null;
    const take = async (): Promise<void> => {
      if (!("wakeLock" in navigator) || document.visibilityState !== "visible") return;
      try {
        const taken = await navigator.wakeLock.request("screen");
        if (!isOpen) return void taken.release();
        lock = taken;
        setAwake(true);
        // The browser takes it back whenever the page goes out of sight; it is asked for again when it returns.
        taken.addEventListener("release", () => isOpen && setAwake(false));
      } catch {
        setAwake(false);
      }
    };
    const retake = () => void take();
    retake();
    document.addEventListener("visibilitychange", retake);
    return () => {
      isOpen = false;
      document.removeEventListener("visibilitychange", retake);
      void lock?.release();
    };
  }, []);
  return isAwake;
}
