import { useSettings } from "../settings/Settings";
import { Fractions } from "../shared/Fractions";
import { bandWords, howDrawn } from "./bandWords";
import type { Colouring } from "./Colouring";

/** Every step of the scale with its colour, its numbers and its words. */
export function SolidLegend({ colouring }: { colouring: Colouring }) {
  const { reader } = useSettings();
  return (
    <div className="solid-legend">
      <ul>
        {colouring.bands.map((band) => (
          <li key={band.token}>
            <span className={`swatch ${band.token}`} aria-hidden="true" />
            <Fractions text={bandWords(colouring.id, band, reader)} />
          </li>
        ))}
      </ul>
      <p>{howDrawn(colouring.id, reader)}</p>
    </div>
  );
}
