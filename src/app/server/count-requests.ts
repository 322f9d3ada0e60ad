import type { FastifyInstance, FastifyRequest } from "fastify";
import { isReader } from "../../services/access/actor.js";
import type { Deps } from "../../services/deps.js";
import { openRequestCounts, type NamedPlan } from "../../services/usage/request-counts.js";

/** Milliseconds between two writes of what was counted. */
const writeEvery = 10_000;

/**
 * Counts the requests of tokens and those for plans, and writes the sums every ten seconds and at the end. What a database does not take is
 * counted on; what a process that is killed had counted is lost.
 */
export function countRequests(app: FastifyInstance, { data, clock, log }: Pick<Deps, "data" | "clock" | "log">): void {
  const counts = openRequestCounts();
  let writing: Promise<void> | null = null;
  const write = (): Promise<void> => {
    const counted = counts.take();
    if (counted === null) return Promise.resolve();
    return data.usage.add(counted).catch((error: unknown) => {
      log.warn({ error: String(error) }, "usage of ten seconds could not be written, and is not counted");
    });
  };
  const writeSoon = (): void => {
    writing ??= write().finally(() => (writing = null));
  };
  const timer = setInterval(writeSoon, writeEvery).unref();
  app.addHook("onResponse", (request, reply, done) => {
    const { actor } = request;
    const isGiven = reply.statusCode < 400 && request.operation?.hasErrors !== true;
    const plans = isGiven && isReader(actor) ? plansOf(request) : none;
    const token = actor.kind === "TOKEN" ? actor.token : null;
    if (token !== null || plans.length > 0) {
      const isRefused = reply.statusCode === 429;
      counts.count({ token, points: reply.paid, isRefused, plans }, clock().toISOString().slice(0, 10));
      if (counts.isFull) writeSoon();
    }
    done();
  });
  app.addHook("onClose", async () => {
    clearInterval(timer);
    await writing;
    await write();
  });
}

const none: readonly NamedPlan[] = [];

/** Of its address, or of its operation. */
function plansOf({ params, operation }: FastifyRequest): readonly NamedPlan[] {
  if (operation !== null) return operation.plans ?? none;
  const { publisher, slug } = (params ?? {}) as { readonly publisher?: string; readonly slug?: string };
  return publisher === undefined || slug === undefined ? none : [{ publisher, plan: slug }];
}
