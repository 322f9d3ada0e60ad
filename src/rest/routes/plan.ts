import { z } from "zod";
import type { Problem } from "../../domain/problem.js";
import { answerPlan, type PlanAnswer } from "../../services/answers/answer-plan.js";
import { planJsonInSlices, planSchema } from "../../exports/json/plan.js";
import { revisionJson, revisionSchema } from "../../exports/json/frozen-plan.js";
import { icalendar } from "../../exports/calendar/icalendar.js";
import { mailTextInSlices } from "../../exports/document/mail-text.js";
import { mailHtmlInSlices } from "../../exports/document/mail-html.js";
import { plainTextInSlices } from "../../exports/document/plain-text.js";
import { planMarkdownInSlices } from "../../exports/document/markdown.js";
import { schemaOrgTextInSlices } from "../../exports/schema-org/schema-org.js";
import { loadFrozenPlan } from "../../services/plans/load-plan.js";
import { briefPlanInSlices, briefPlanSchema } from "../../exports/json/brief-plan.js";
import { boundedJsonInSlices } from "../../http/bounded-json.js";
import { readSelection, selectionNames, selectionParameters } from "../plan-selection.js";
import { planAddress } from "../../exports/addresses.js";
import { planPath } from "../../exports/page/page-links.js";
import { addressesOf } from "../rest-addresses.js";
import { asJson, asText, endpoint, found, refused, type Question } from "../endpoint.js";
import { noSession } from "../no-session.js";
import { inPath, inQuery, isYes, wholeNumber, yesOrNo } from "../parameter.js";
import { aboutPlan, planName, planParameters, planInPath, noSuchPlan, pointsOfPlans } from "../plan-request.js";
import { badParameters } from "../refusal.js";

const addresses = ({ publication }: PlanAnswer, question: Question) =>
  addressesOf(question, { publisher: publication.publisher.slug, slug: publication.slug }, publication.revision);

/** One plan for one household, in every form. */
export const planEndpoint = endpoint(
  {
    method: "GET",
    path: "/v1/plans/{publisher}/{slug}",
    operationId: "getPlan",
    tag: "plans",
    summary: "A plan, computed for one household",
    description:
      "The newest revision, or the one named by `revision`, with everything the service says about it: meals, components," +
      " shopping list, session, keeping, allergens, diets, nutrition, cautions.",
    points: ({ query }) => pointsOfPlans(1, query),
    parameters: [...planParameters, ...selectionParameters],
    selection: selectionNames,
    refusals: ["not-found", "withdrawn", "no-session"],
    caching: "LIVE",
    page: ({ address, ...question }) => {
      const at = address.indexOf("?");
      return planPath(planName(question)) + (at < 0 ? "" : address.slice(at));
    },
  },
  (question) => {
    const selection = readSelection(question.query);
    return aboutPlan(question, answerPlan, selection.ok ? [] : selection.problems);
  },
  [
    asJson(planSchema, "The plan computed.", planJsonInSlices),
    asText("markdown", "As Markdown, for a newsletter.", (answer: PlanAnswer, question) =>
      planMarkdownInSlices(answer, addresses(answer, question), answer.publication.changeNote),
    ),
    asText(
      "jsonLd",
      "As schema.org data: a list of recipes, and the session.",
      (answer: PlanAnswer, question) => schemaOrgTextInSlices(answer, addresses(answer, question)),
      z.record(z.string().max(200), z.unknown()),
    ),
    asText(
      "calendar",
      "As a calendar of the session, or several, and the days after it; needs `start` and `zone`.",
      (answer: PlanAnswer, question) =>
        answer.sessions.length === 0 && answer.household.session !== null
          ? refused(noSession(answer.sessionProblems, answer.scaled))
          : icalendar(answer, addresses(answer, question)),
    ),
    asText("text", "As plain text.", plainTextInSlices),
    {
      name: "brief",
      schema: briefPlanSchema,
      description:
        "Parts of it, as JSON that says what is repeated once: the answer where `include` or `fields` is given.",
      *write(answer: PlanAnswer, question) {
        const selection = readSelection(question.query);
        if (!selection.ok) return selection;
        const plan = yield* planJsonInSlices(answer, question);
        return { ok: true, value: yield* boundedJsonInSlices(yield* briefPlanInSlices(plan, selection.value)) };
      },
    },
  ],
);

const picturesParameter = inQuery(
  "pictures",
  "`yes` shows the plan's picture, which the mail program then fetches from this service. Default: `no`, and the mail fetches nothing.",
  yesOrNo,
);

/** The plan as a letter that mail programs can show. */
export const mailEndpoint = endpoint(
  {
    method: "GET",
    path: "/v1/plans/{publisher}/{slug}/mail",
    operationId: "getPlanMail",
    tag: "plans",
    summary: "A plan as HTML and as text for e-mail",
    description:
      "The whole plan in HTML that mail programs show: tables and inline styles, no scripts, and nothing loaded from elsewhere unless `pictures` is `yes`." +
      " As plain text, with the same words, for the other part of the mail.",
    points: ({ query }) => pointsOfPlans(1, query),
    parameters: [...planParameters, picturesParameter],
    refusals: ["not-found", "withdrawn"],
    caching: "LIVE",
  },
  (question) => aboutPlan(question, answerPlan),
  [
    asText("html", "The HTML of the mail.", (answer: PlanAnswer, question) => {
      const wrong: Problem[] = [];
      const origin = isYes(question.query, "pictures", wrong) ? question.origin : null;
      if (wrong.length > 0) return refused(badParameters(wrong));
      return mailHtmlInSlices(answer, addresses(answer, question), answer.publication.changeNote, origin);
    }),
    asText("text", "The plain text of the mail.", (answer: PlanAnswer, question) =>
      mailTextInSlices(answer, addresses(answer, question), answer.publication.changeNote),
    ),
  ],
);

/** What a revision froze. Nothing of today is in it, so it is the one answer that never changes. */
export const revisionEndpoint = endpoint(
  {
    method: "GET",
    path: "/v1/plans/{publisher}/{slug}/revisions/{revision}",
    operationId: "getRevision",
    tag: "plans",
    summary: "The frozen document of a revision",
    description:
      "As its writer wrote it, with every component and food it refers to. It takes no household: to compute a revision, name" +
      " it at the plan's own address, as `?revision=2`.",
    parameters: [...planInPath, inPath("revision", "Number of the revision.", z.number().int().min(1))],
    refusals: ["not-found"],
    caching: "FROZEN",
    links: "The address that always has the newest revision",
  },
  async (question) => {
    const problems: Problem[] = [];
    const revision = wholeNumber(new Map([["revision", [question.path["revision"] ?? ""]]]), "revision", problems);
    if (revision === null) return refused(badParameters(problems));
    const ref = { ...planName(question), revision };
    const published = await loadFrozenPlan(question.deps, ref);
    if (published === null) return refused(await noSuchPlan(question.deps, ref));
    return found(published, { link: `<${planAddress(published)}>; rel="latest-version"` });
  },
  [asJson(revisionSchema, "The document.", revisionJson)],
);
