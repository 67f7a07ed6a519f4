import { createContext, useContext } from "react";

/** The one pad of a page: which field it stands for, and where it is drawn. */
export interface PadHolder {
  /** Where the pad comes up by itself when a field is touched: on the Bench, and wherever a finger points. */
  readonly isOn: boolean;
  /** Whether the key that closes it goes back to the table's own fields. */
  readonly hasTable: boolean;
  readonly openId: string | null;
  readonly place: HTMLElement | null;
  open(id: string): void;
  close(): void;
  turn(isOn: boolean): void;
}

export const PadContext = createContext<PadHolder | null>(null);

/** The page's pad; null where it has none. */
export const usePad = (): PadHolder | null => useContext(PadContext);
