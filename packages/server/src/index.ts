export { keepDemoBoards } from "./keepDemoBoards";
export { PortsTakenError, type RunningServer, startServer } from "./startServer";
