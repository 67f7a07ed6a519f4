import { length, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";

type Width = NonNullable<Plan["shape"]>["widths"][number];

/** Where builders take both widths, along the bottom. */
const FROM_TIP_M = 0.3048;

/** A width's name, and where it is taken: `tail width`, `12 in from the tip`. */
export function widthWords({ id }: Width, reader: Reader): { readonly name: string; readonly where: string } {
  const t = tell(reader);
  return {
    name: id === "tail-12-in" ? t`tail width` : t`nose width`,
    where:
      id === "tail-12-in"
        ? t`${showQuantity(length(FROM_TIP_M), reader)} from the tail`
        : t`${showQuantity(length(FROM_TIP_M), reader)} from the nose`,
  };
}
