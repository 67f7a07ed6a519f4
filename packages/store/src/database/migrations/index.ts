import { first } from "./first";
import type { Migration } from "./Migration";

/** Every step, oldest first. */
export const MIGRATIONS: readonly Migration[] = [first];
