import { changePageSchema } from "../../exports/json/change.js";
import { listChangesWithPlans, type ChangeWithPlan } from "../../services/plans/list-changes-with-plans.js";
import { titledPage, type ShownTitle } from "../../services/plans/titles-in-language.js";
import { planAddress } from "../../exports/addresses.js";
import { asJson, endpoint } from "../endpoint.js";
import { pageOf, pageParameters, type LinkedPage } from "../pagination.js";
import { inQuery, one, titleLocale } from "../parameter.js";

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
    parameters: [inQuery("publisher", "Slug of a publisher. Default: all."), titleLocale, ...pageParameters],
    refusals: [],
    caching: "CHANGES",
    links: "The next and the previous page",
  },
  (question) => {
    const { deps, query } = question;
    const publisher = one(query, "publisher");
    return pageOf<TitledChange>(question, async (page) =>
      titledPage(deps, await listChangesWithPlans(deps, { publisher, page }), ({ plan }) => plan, one(query, "locale")),
    );
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
