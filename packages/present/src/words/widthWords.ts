import { length, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";

type Width = NonNullable<Plan["shape"]>["widths"][number];

const ENDS: Readonly<Record<Width["id"], "tail" | "nose">> = { "tail-12-in": "tail", "nose-12-in": "nose" };
/** Where builders take both widths, along the bottom. */
const FROM_TIP_M = 0.3048;

/** A width's name, and where it is taken: `tail width`, `12 in from the tip`. */
export function widthWords({ id }: Width, reader: Reader): { readonly name: string; readonly where: string } {
  return {
    name: `${ENDS[id]} width`,
    where: `${showQuantity(length(FROM_TIP_M), reader)} from the ${id === "tail-12-in" ? "tail" : "nose"}`,
  };
}
