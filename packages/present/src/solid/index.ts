export type { Solid } from "./Solid";
export { solid3mf } from "./solid3mf";
export { solidGlb } from "./solidGlb";
