import type { z } from "zod";

/** A type with nothing in it to be written to, as the engine declares its plan. */
type Settled<T> = T extends object ? { readonly [Key in keyof T]: Settled<T[Key]> } : T;

type Same<A, B> = (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false;

/**
 * The type of a schema that says exactly what the engine's type says. Where one has a field that the other lacks, or of
 * another type, this is `never`, and the schema that is given for it does not compile.
 */
export type Mirrors<Type, Schema extends z.ZodType> =
  Same<Settled<z.output<Schema>>, Settled<Type>> extends true ? z.ZodType<Type> : never;
