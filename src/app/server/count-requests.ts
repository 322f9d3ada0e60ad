import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { isReader } from "../../services/access/actor.js";
import type { Deps } from "../../services/deps.js";
import { openRequestCounts, type NamedPlan } from "../../services/usage/request-counts.js";

/** Milliseconds between two writes of what was counted. */
const writeEvery = 10_000;

/**
 * Counts the requests of tokens and those for plans, and writes the sums every ten seconds and at the end. What the database does not take is
 * lost, with a warning, as is what a process had counted that is killed.
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
    const plans = isReader(actor) && isGiven(request, reply) ? plansOf(request) : none;
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

/** It is answered with what it asked for, or with word that it has not changed: no redirect, no refusal, no head alone. */
const isGiven = ({ method, operation }: FastifyRequest, { statusCode }: FastifyReply): boolean =>
  (statusCode === 200 || statusCode === 304) && method !== "HEAD" && operation?.hasErrors !== true;

/** Routes below which things are a plan's: no components, and no previews of drafts. */
const routesOfPlans = /^\/(?:v1\/plans|p)\//;

/** Of its operation, or of its address. */
function plansOf({ params, operation, routeOptions }: FastifyRequest): readonly NamedPlan[] {
  if (operation !== null) return operation.plans ?? none;
  if (!routesOfPlans.test(routeOptions.url ?? "")) return none;
  const { publisher, slug } = (params ?? {}) as { readonly publisher?: string; readonly slug?: string };
  return publisher === undefined || slug === undefined ? none : [{ publisher, plan: slug }];
}
