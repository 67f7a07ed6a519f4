/** A solid as it was read back from a file, in the file's own unit and axes. */
export interface ReadSolid {
  readonly positions: Float64Array;
  readonly triangles: Uint32Array;
}
