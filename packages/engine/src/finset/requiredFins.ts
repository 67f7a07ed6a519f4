import type { Arrangement } from "./FinsInput";

/** The fins an arrangement is made of. An extra fin may have any other name. */
export const REQUIRED_FINS: Readonly<Record<Arrangement, readonly FinRole[]>> = {
  single: ["centre"],
  twin: ["front"],
  tri: ["front", "centre"],
  quad: ["front", "rear"],
  "twin-trailer": ["front", "centre"],
  "five-box": ["front", "rear", "centre"],
  "single-sides": ["front", "centre"],
};

export type FinRole = "front" | "rear" | "centre";

const ROLES: readonly string[] = ["front", "rear", "centre"] satisfies readonly FinRole[];

export const isRole = (name: string): name is FinRole => ROLES.includes(name);
