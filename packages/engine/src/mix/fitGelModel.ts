import type { Resin } from "../constants/Resin";
import { fitPeroxideGel } from "./fitPeroxideGel";
import { fitTwoPartGel } from "./fitTwoPartGel";
import type { GelModel } from "./GelModel";

/** How long a cup of this resin stays open; null for a resin that only light sets, and where its points are no use. */
export function fitGelModel(resin: Resin): GelModel | null {
  switch (resin.kind) {
    case "peroxide":
      return fitPeroxideGel(resin);
    case "two-part":
      return fitTwoPartGel(resin);
    case "sunlight":
      return null;
  }
}
