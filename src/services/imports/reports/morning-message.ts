import type { OperatorAddress } from "../feeds/operator-address.js";
import type { MorningReport } from "../../../domain/model/morning-report.js";
import { signedHeaders, type WebhookMessage } from "../../webhooks/webhook-message.js";
import { utcDay } from "../../../domain/utc-day.js";

/** Receivers by the Standard Webhooks specification take 20 kB; the rest is in the report. */
const mostImports = 40;
const mostPlans = 20;
const mostTokens = 20;

/** The id is that of the day, so that a report that is sent again is known as the same. */
export function morningMessage(
  { url, secret }: OperatorAddress,
  { from, to, imports, moreImports, plans = [], importOnlyTokens = [], keptBack = [] }: MorningReport,
): WebhookMessage {
  const waiting = imports.filter(({ state, toMend }) => state !== "DONE" || toMend > 0);
  const rest = imports.filter((each) => !waiting.includes(each));
  const body = JSON.stringify({
    type: "imports.reported",
    timestamp: to.toISOString(),
    data: {
      ...{ from, to, ended: imports.length, toLookAfter: waiting.length },
      imports: [...waiting, ...rest]
        .slice(0, mostImports)
        .map(({ feed, publisher, run, kind, state, counts, problems, superseded, toMend }) => ({
          ...{ run, publisher, feed, kind, state, counts, toMend },
          problems: problems.map(({ code }) => code),
          superseded: superseded.slice(0, 5),
        })),
      plans: plans
        .slice(0, mostPlans)
        .map(({ publisher, slug, revision, lessSafe }) => ({ publisher, plan: slug, revision, lessSafe })),
      morePlans: plans.length > mostPlans,
      importOnlyTokens: importOnlyTokens
        .slice(0, mostTokens)
        .map(({ token, publisher, until }) => ({ token, publisher, until })),
      keptBack: keptBack.slice(0, mostPlans).map(({ scheduled, publisher, slug, kind, problems }) => ({
        ...{ scheduled, publisher, plan: slug, kind },
        problems: problems.map(({ code }) => code),
      })),
      moreImports: moreImports || imports.length > mostImports,
      report: "/v1/imports/report",
    },
  });
  const id = `imports-${utcDay(to)}`;
  return { url, headers: signedHeaders({ id, body, at: to, secrets: [secret] }), body };
}
