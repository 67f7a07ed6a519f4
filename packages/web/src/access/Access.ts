import { createContext, useContext } from "react";

export type Role = "bench" | "keeper";

/** Who the shop's computer takes this device for. */
export interface Access {
  /** This page is open on the shop's computer itself. */
  readonly here: boolean;
  readonly shared: boolean;
  /** By HTTPS. */
  readonly secure: boolean;
  readonly device: { readonly id: string; readonly name: string; readonly role: Role } | null;
}

export interface AccessHolder {
  /** Null while it is not known, as when the shop's computer is away. */
  readonly access: Access | null;
  /** Asks again. */
  ask(): void;
}

export const AccessContext = createContext<AccessHolder>({ access: null, ask: () => undefined });

export const useAccess = (): AccessHolder => useContext(AccessContext);

export const isKeeper = (access: Access | null): boolean =>
  access !== null && (access.here || access.device?.role === "keeper");
