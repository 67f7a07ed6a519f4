import type { Mesh, Plan } from "@lapline/engine";
import { Color } from "three";
import { bandOf, type Colouring } from "./Colouring";
import { placeFinder } from "./SolidPlace";

/** The colour of every vertex by its band, in linear light; tokens are read off the page. */
export function vertexColours(
  { positions }: Mesh,
  { bands, valueAt }: Colouring,
  shape: NonNullable<Plan["shape"]>,
): Float32Array {
  const style = getComputedStyle(document.documentElement);
  const colours = bands.map(({ token }) => new Color(style.getPropertyValue(`--${token}`).trim()));
  const placeOf = placeFinder(shape);
  const rgb = new Float32Array(positions.length);
  for (let i = 0; i < positions.length; i += 3) {
    const place = placeOf(positions[i]!, positions[i + 1]!, positions[i + 2]!);
    colours[bandOf(bands, valueAt(place))]?.toArray(rgb, i);
  }
  return rgb;
}
