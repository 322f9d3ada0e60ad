import type { GraphQLResponse } from "@apollo/server";
import type { Call } from "../server/call.js";
import { refusalStatus, type Refusal } from "../server/refusal.js";

/** Puts a refusal in the place of an answer: its errors, its status and its headers. */
export function refuse(call: Call, response: GraphQLResponse, refused: Refusal): void {
  const { errors, cost, headers } = refused;
  response.body = {
    kind: "single",
    singleResult: cost === undefined ? { errors } : { errors, extensions: { cost } },
  };
  response.http.status = refusalStatus(refused, call.type.older);
  for (const [name, value] of Object.entries(headers)) response.http.headers.set(name, value);
  call.hasErrors = true;
}
