import { expect, it } from "vitest";
import { noHousehold } from "../../../src/domain/model/household.js";
import { checkPublishedPlan } from "../../../src/services/drafts/check/check-plan.js";
import { demo } from "../../graphql/open-test-app.js";
import { shippedRules } from "../../kit/answer-of.js";

it.each(demo.bundles.map((bundle) => [bundle.plan.slug, bundle] as const))(
  "the demo cuts what it says is cut and chills what it keeps: %s",
  async (_, bundle) => {
    const clock = (): Date => new Date("2026-12-01T09:00:00Z");
    const rules = () => Promise.resolve(shippedRules.safety);
    const found = await checkPublishedPlan(bundle, noHousehold, shippedRules, { clock }, rules);
    if (!found.ok) throw new Error(JSON.stringify(found.problems));
    const codes = found.value.map(({ code, path }) => [code, path.join(" ")].join(": "));
    expect(
      codes.filter((each) => /^(CUT_IN_NO_STEP|NEVER_CHILLED|LINE_IN_NO_STEP|SESSION_TOO_LONG)/.test(each)),
    ).toEqual([]);
  },
);
