import { changePageSchema } from "../../exports/json/change.js";
import { boundedJson } from "../../http/bounded-json.js";
import { eventText } from "../../http/event-stream.js";
import { largestPage } from "../../services/answers/page-request.js";
import { namedPublisher } from "../../services/access/find-publishers.js";
import type { Deps, Page } from "../../services/deps.js";
import { signalsOf } from "../../services/plans/change-signals.js";
import { followChanges, newestPosition } from "../../services/plans/follow-changes.js";
import { ok, type Result } from "../../domain/problem.js";
import { listChangesWithPlans, type ChangeWithPlan } from "../../services/plans/list-changes-with-plans.js";
import { titledPage, type ShownTitle } from "../../services/plans/titles-in-language.js";
import { planAddress } from "../../exports/addresses.js";
import { answerWithTimeLimit } from "../answer-with-time-limit.js";
import { asJson, endpoint, eventsEndpoint, found, refused, type Found, type FollowedEvents } from "../endpoint.js";
import { cursor, pageOf, pageParameters, type LinkedPage } from "../pagination.js";
import { inHeader, inQuery, one, titleLocale } from "../parameter.js";
import { badParameters } from "../refusal.js";

type TitledChange = ChangeWithPlan & { readonly shown: ShownTitle };

const changeJson = ({ id, kind, at, plan, shown }: TitledChange) => ({
  id,
  kind,
  at: at.toISOString(),
  plan: {
    publisher: plan.publisher,
    slug: plan.slug,
    title: shown.title,
    language: shown.language,
    revision: plan.revision,
    changeNote: plan.changeNote,
    withdrawnBecause: plan.withdrawnBecause,
    address: `${planAddress(plan)}?revision=${plan.revision}`,
  },
});

interface AskedChanges {
  /** Slug; null: of all publishers. */
  readonly publisher: string | null;
  readonly locale: string | null;
}

/** A page of changes whose plans are titled in a language. */
const titledChanges = async (
  deps: Deps,
  { publisher, locale }: AskedChanges,
  page: Parameters<typeof listChangesWithPlans>[1]["page"],
): Promise<Result<Page<TitledChange>>> =>
  titledPage(deps, await listChangesWithPlans(deps, { publisher, page }), ({ plan }) => plan, locale);

const inPublisher = inQuery("publisher", "Slug of a publisher. Default: all.");

export const changesEndpoint = endpoint(
  {
    method: "GET",
    path: "/v1/changes",
    operationId: "listChanges",
    tag: "publishers",
    summary: "What was published, corrected and withdrawn",
    description:
      "The oldest first. Keep `end` and ask for what comes `after` it: every change is seen once, in order, however many" +
      " publishers write at the same time. `last=1` gives the newest, to begin from now. Changes are kept for ever.",
    parameters: [inPublisher, titleLocale, ...pageParameters],
    refusals: [],
    caching: "CHANGES",
    links: "The next and the previous page",
  },
  (question) => {
    const { deps, query } = question;
    const asked = { publisher: one(query, "publisher"), locale: one(query, "locale") };
    return pageOf<TitledChange>(question, (page) => titledChanges(deps, asked, page));
  },
  [
    asJson(changePageSchema, "The page.", ({ items, next, previous, end }: LinkedPage<TitledChange>) => ({
      items: items.map(changeJson),
      next,
      previous,
      end,
    })),
  ],
);

const lastEventIdHeader = "Last-Event-ID";

/** Refuses what can never be told of, before anything is told. */
async function readPosition(deps: Deps, asked: AskedChanges, given: string | null): Promise<Result<string>> {
  const named = asked.publisher === null ? null : await namedPublisher(deps, asked.publisher);
  if (named?.ok === false) return named;
  const after = given ?? (await newestPosition(deps));
  const looked = await titledChanges(deps, asked, { first: 1, after });
  return looked.ok ? ok(after) : looked;
}

export const changeStreamEndpoint = eventsEndpoint(
  {
    method: "GET",
    path: "/v1/changes/stream",
    operationId: "followChanges",
    tag: "publishers",
    summary: "What is published, corrected and withdrawn, as it happens",
    description:
      "Server-sent events (HTML standard, 9.2). An event `change` has a `Change` as `data`, and as `id` its position, the same as `end` of" +
      " `/v1/changes`: send it as `Last-Event-ID`, or as `after`, to go on there, at whichever instance. Without either it begins now. An event `end`" +
      " says why this stream ends (`reason`: `STOPPING`, `TIME`, `BUDGET`, `UNAVAILABLE`, `FAULT`; more may be added); `retry` says after how many milliseconds to come back. Words" +
      " of closed lists may gain members.",
    parameters: [
      inPublisher,
      titleLocale,
      inQuery("after", "Begin after this position. `Last-Event-ID` counts before it.", cursor),
      inHeader(
        lastEventIdHeader,
        "Begin after the event with this `id`. Clients send it by themselves when they come back.",
        cursor,
      ),
    ],
    refusals: ["too-many-streams"],
    caching: "NEVER",
  },
  "Events, as long as somebody reads them.",
  async ({ question, lastEventId, queryTime }): Promise<Found<FollowedEvents>> => {
    const { deps, query } = question;
    const asked = { publisher: one(query, "publisher"), locale: one(query, "locale") };
    const limited = <Done>(work: (deps: Deps) => Promise<Done>): Promise<Done> =>
      answerWithTimeLimit(deps, queryTime, null, work);
    const position = await limited((own) => readPosition(own, asked, lastEventId ?? one(query, "after")));
    if (!position.ok) {
      const isHeader = lastEventId !== null;
      const named = position.problems.map((problem) =>
        isHeader && problem.path[0] === "after" ? { ...problem, path: [lastEventIdHeader] } : problem,
      );
      return refused(badParameters(named));
    }
    const read = (after: string) =>
      signalsOf(deps).share(JSON.stringify([asked, after]), () => limited((own) => readEvents(own, asked, after)));
    return found({
      position: position.value,
      async *follow(over) {
        const { publisher } = asked;
        for await (const { text } of followChanges(deps, { publisher, after: position.value, read, over })) yield text;
      },
    });
  },
);

/** Changes after a position as events: once for all who follow the same. */
async function readEvents(deps: Deps, asked: AskedChanges, after: string) {
  const page = await titledChanges(deps, asked, { first: largestPage, after });
  // Its position and its language were good when the stream began.
  if (!page.ok) throw new Error(`changes cannot be followed: ${JSON.stringify(page.problems)}`);
  const { items, hasNext } = page.value;
  const events = items.map(({ cursor: id, item }) =>
    eventText({ event: "change", id, data: boundedJson(changeJson(item)) }),
  );
  return { text: Buffer.from(events.join("")), end: items.at(-1)?.cursor ?? null, hasNext };
}
