import type { Board, HouseSet, HouseSetOffer } from "@lapline/engine";
import { useEffect, useState } from "react";
import { planner } from "../plan/tabPlanner";

interface Offered {
  readonly set: HouseSet;
  readonly offers: readonly HouseSetOffer[];
}

/** What a house set would be on a board, worked out beside the page: the last that is known of this set, null before. */
export function useOffers({ survey, fins }: Board, set: HouseSet | undefined): Offered["offers"] | null {
  const [known, setKnown] = useState<Offered | null>(null);
  useEffect(() => {
    if (set === undefined) return;
    let isCurrent = true;
    planner.offers({ survey, ...(fins && { fins }) }, set).then(
      (offers) => isCurrent && setKnown({ set, offers }),
      // The next that is asked for opens the thread anew.
      () => undefined,
    );
    return () => {
      isCurrent = false;
    };
  }, [survey, fins, set]);
  return known !== null && known.set === set ? known.offers : null;
}
