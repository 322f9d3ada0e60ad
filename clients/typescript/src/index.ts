export type { Answer, Failure, Problem } from "./answer.js";
export { connect, type ConnectOptions, type Prepwright } from "./connect.js";
export type { GraphqlAnswer, GraphqlError, Operation } from "./graphql.js";
export type * from "./questions.js";
export type { components, operations, paths } from "./generated/rest.js";
