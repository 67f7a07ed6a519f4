import { first } from "./first";
import type { Migration } from "./Migration";
import { second } from "./second";
import { third } from "./third";

/** Every step, oldest first. */
export const MIGRATIONS: readonly Migration[] = [first, second, third];
