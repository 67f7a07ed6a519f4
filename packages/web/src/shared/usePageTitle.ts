import { useEffect } from "react";

/** What the browser's tab is called. */
export function usePageTitle(title: string): void {
  useEffect(() => {
    document.title = `${title} · Lapline`;
  }, [title]);
}
