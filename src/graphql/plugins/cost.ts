import type { ApolloServerPlugin } from "@apollo/server";
import { Refused, type CallContext } from "../server/call.js";
import type { EngineOptions } from "../server/engine-options.js";
import type { Operations } from "../server/operations.js";
import { tooDear } from "../server/refusal.js";

/** What an operation costs with its variables is known, and charged, before any of it is run; what computing took, afterwards. */
export function costPlugin({ costLimit }: EngineOptions, documents: Operations): ApolloServerPlugin<CallContext> {
  const listener = {
    didResolveOperation: ({ request, contextValue: { call } }) => {
      const { chosen, asked } = call;
      if (chosen === null) throw new Error("an operation is priced before it is known");
      const { operation, isRegistered } = chosen;
      const coerced = operation.coerce(request.variables ?? {});
      if (!coerced.ok) throw new Refused(documents.wrongVariables(coerced.errors));
      const { variables } = coerced;
      const points = operation.cost(variables);
      const { kind, name } = operation;
      const plans = operation.plansNamed(variables);
      const reported = { kind, operation: name, isRegistered, cost: points, hasErrors: false, plans } as const;
      asked.report(reported);
      const cost = { asked: points, limit: costLimit };
      // Whatever the limit is, clients can find out what there is to ask.
      if (points > costLimit && operation.aboutSchema === null) throw new Refused(tooDear(cost));
      asked.charge(points);
      call.priced = { variables, reported, cost };
      return Promise.resolve();
    },
    executionDidStart: ({ contextValue: { call } }) =>
      Promise.resolve({
        executionDidEnd: () => {
          call.asked.chargeOwed(call.deps?.work?.steps ?? 0);
          return Promise.resolve();
        },
      }),
    willSendResponse: ({ response: { body }, contextValue: { call } }) => {
      if (body.kind === "single" && call.priced !== null) {
        body.singleResult = { ...body.singleResult, extensions: { cost: call.priced.cost } };
      }
      return Promise.resolve();
    },
  } satisfies Awaited<ReturnType<NonNullable<ApolloServerPlugin<CallContext>["requestDidStart"]>>>;
  return { requestDidStart: () => Promise.resolve(listener) };
}
