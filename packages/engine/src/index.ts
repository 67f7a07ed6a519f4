export type { Board } from "./Board";
export type { Plan } from "./Plan";
export { planBuild } from "./planBuild";
