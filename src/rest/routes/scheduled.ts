import { z } from "zod";
import { scheduledPageSchema } from "../../exports/json/scheduled.js";
import { problemJson } from "../../exports/json/warning.js";
import { scheduledNotice } from "../../exports/sentences/scheduled-notice.js";
import type { ScheduledChange, ScheduledState } from "../../services/deps.js";
import { listScheduled } from "../../services/schedule/change-scheduled.js";
import { asJson, endpoint } from "../endpoint.js";
import { pageOf, pageParameters, type LinkedPage } from "../pagination.js";
import { inPath, inQuery, one } from "../parameter.js";

const states: readonly ScheduledState[] = ["WAITING", "DONE", "KEPT_BACK", "CANCELLED"];

export const scheduledEndpoint = endpoint(
  {
    method: "GET",
    path: "/v1/publishers/{publisher}/scheduled",
    operationId: "listScheduled",
    tag: "publishers",
    summary: "Publications and withdrawals at a time",
    description: "The next first: those that wait and those that were kept back, or, with `state`, those in one state.",
    parameters: [
      inPath("publisher", "Slug of the publisher."),
      inQuery(
        "state",
        "Only those in this state. Default: those that wait, and those that were kept back.",
        z.enum(states),
      ),
      ...pageParameters,
    ],
    scope: "READ_DRAFTS",
    refusals: [],
    caching: "NEVER",
    links: "The next and the previous page",
  },
  (question) => {
    const { publisher = "" } = question.path;
    const asked = states.filter((state) => state === one(question.query, "state"));
    const wanted: readonly ScheduledState[] = asked.length > 0 ? asked : ["WAITING", "KEPT_BACK"];
    return pageOf<ScheduledChange>(question, (page) =>
      listScheduled(question.deps, question.caller.actor, { publisher, states: wanted, page }),
    );
  },
  [
    asJson(scheduledPageSchema, "The page.", ({ items, next, previous }: LinkedPage<ScheduledChange>) => ({
      ...{ next, previous },
      items: items.map((change) => {
        const { id, publisher, slug, kind, state, dueAt, localTime, zone, version, revision, problems } = change;
        return {
          ...{ id, publisher, slug, kind, state, localTime, zone, version, revision },
          dueAt: dueAt.toISOString(),
          problems: problems.map(problemJson),
          notice: scheduledNotice(change),
        };
      }),
    })),
  ],
);
