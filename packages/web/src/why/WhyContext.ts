import { createContext } from "react";

/** Opens the back of the sheet of the number at a plan path; null where a page has no plan to ask. */
export const WhyContext = createContext<((path: string) => void) | null>(null);
