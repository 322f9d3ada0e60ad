import type { FastifyInstance } from "fastify";

/** What whoever answers a request knows of it that its address does not say. For logs and figures. */
interface OperationSummary {
  readonly kind: "query" | "mutation" | "refused";
  /** As the caller named it: anything. */
  readonly operation: string | null;
  /** The name is one of a list that the operator keeps, so that there are few of them. */
  readonly isRegistered: boolean;
  /** What the document costs, before it is run; null: not known. */
  readonly cost: number | null;
  /** Whether the answer holds errors, whatever its status. */
  readonly hasErrors: boolean;
}

declare module "fastify" {
  interface FastifyRequest {
    /** Set while it is answered; null: nothing was told. */
    operation: OperationSummary | null;
  }
}

export function addOperationSummary(app: FastifyInstance): void {
  app.decorateRequest("operation", null);
}
