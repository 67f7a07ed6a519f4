export { type BoardToCut, buildNestOrders } from "./buildNestOrders";
export { checkNestOrder, type NestFault } from "./checkNestOrder";
export type { NestedPiece, NestLay, NestOrder, NestPiece, NestProgress, NestSearch } from "./NestOrder";
export type { NestAnswer, NestTask } from "./NestWork";
export { searchNest } from "./searchNest";
