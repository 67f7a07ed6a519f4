export const LANGUAGE_KEY = "lapline.language";

/** A browser may forbid storage; then the setting lasts as long as the page. */
export function recall(key: string): string | null {
  try {
    return window.localStorage.getItem(key);
  } catch {
    return null;
  }
}

/** For the next visit. */
export function keep(key: string, value: string): void {
  try {
    window.localStorage.setItem(key, value);
  } catch {
    return;
  }
}
