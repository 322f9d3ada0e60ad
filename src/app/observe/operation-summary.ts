import type { FastifyInstance } from "fastify";
import type { NamedPlan } from "../../services/usage/request-counts.js";

/** A GraphQL operation as logs and metrics know it: what the address of a request does not say. */
interface OperationSummary {
  readonly kind: "query" | "mutation" | "subscription" | "refused";
  /** As the caller named it: anything. */
  readonly operation: string | null;
  /** The name is one of a list that the operator keeps, so that there are few of them. */
  readonly isRegistered: boolean;
  /** What the document costs, before it is run; null: not known. */
  readonly cost: number | null;
  /** Whether the answer holds errors, whatever its status. */
  readonly hasErrors: boolean;
  /** Those that it asks for by name; left out: none. */
  readonly plans?: readonly NamedPlan[];
}

declare module "fastify" {
  interface FastifyRequest {
    /** Set while the request is answered; null: it is no operation. */
    operation: OperationSummary | null;
  }
}

export function addOperationSummary(app: FastifyInstance): void {
  app.decorateRequest("operation", null);
}
