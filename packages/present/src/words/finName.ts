/** A mark or a fin as a person says it: `front left`. */
export function finName(id: string): string {
  return id.replaceAll("-", " ");
}
