import type { Sourced } from "../constants/Sourced";

export interface Band {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

type Drivers<K extends string> = Readonly<Record<K, Sourced | Band>>;

/**
 * A predicted number with its band of about 90 %. Method: each driver alone is put at its low and at its high end, and what the
 * result moves down and up is summed in squares, as for independent errors (GUM's law of propagation, from memory, with finite
 * steps instead of derivatives). Drivers without a range hold still. The model gets the same object each time and must not keep it.
 */
export function computeBand<K extends string>(
  drivers: Drivers<K>,
  model: (values: Readonly<Record<K, number>>) => number,
): Band {
  const keys = Object.keys(drivers) as K[];
  const values = {} as Record<K, number>;
  for (const key of keys) values[key] = drivers[key].value;
  const value = model(values);
  let downSquared = 0;
  let upSquared = 0;
  for (const key of keys) {
    const driver = drivers[key];
    values[key] = driver.low ?? driver.value;
    const atLow = model(values);
    values[key] = driver.high ?? driver.value;
    const atHigh = model(values);
    values[key] = driver.value;
    downSquared += Math.min(atLow - value, atHigh - value, 0) ** 2;
    upSquared += Math.max(atLow - value, atHigh - value, 0) ** 2;
  }
  return { value, low: value - Math.sqrt(downSquared), high: value + Math.sqrt(upSquared) };
}
