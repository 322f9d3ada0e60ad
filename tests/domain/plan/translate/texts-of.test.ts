import { describe, expect, it } from "vitest";
import { noHousehold } from "../../../../src/domain/model/household.js";
import type { Translation } from "../../../../src/domain/model/translation.js";
import { comparePlans } from "../../../../src/domain/plan/review/compare-plans.js";
import { frozenTranslations, languagesOfPlan } from "../../../../src/domain/plan/translate/texts-of.js";
import { documentOf } from "../../../../src/persistence/plans/frozen-document.js";
import { answerOf } from "../../../kit/answer-of.js";
import { largeBundle } from "../../../kit/large-bundle.js";

const whole = largeBundle({ components: 2, lines: 2, meals: 2 });
const component = whole.components[0]?.slug ?? "";
const ofPlan = (language: string): Translation => ({
  of: { kind: "PLAN", slug: whole.plan.slug },
  language,
  texts: [
    { path: ["title"], text: `Titel ${language}`, of: whole.plan.title },
    { path: ["meals", "gone", "title"], text: "Weg" },
  ],
});
const ofComponent = (language: string): Translation => ({
  of: { kind: "COMPONENT", slug: component },
  language,
  texts: [{ path: ["title"], text: `Teil ${language}` }],
});

describe("a plan with translations", () => {
  // Its writer may change the language of the plan to one that it was translated into before.
  it.each(["de", whole.plan.locale])("is read in each language once, with one into %s too", (language) => {
    const bundle = { ...whole, translations: [ofPlan("fr"), ofPlan(language), ofPlan("fr")] };
    const languages = languagesOfPlan(bundle);
    expect(languages).toEqual([...new Set([whole.plan.locale, "fr", language])]);
  });

  it("freezes those that it can be read in, and none into its own language", () => {
    const { locale } = whole.plan;
    const translations = [ofPlan("de"), ofPlan(locale), ofComponent("de"), ofComponent(locale), ofComponent("fr")];
    const frozen = frozenTranslations({ ...whole, translations });
    expect(frozen.map(({ of, language }) => `${of.kind} ${language}`)).toEqual(["COMPONENT de", "PLAN de"]);
    expect(frozen.flatMap(({ texts }) => texts.map(({ text }) => text))).toEqual(["Teil de", "Titel de"]);
  });

  it("differs from what is frozen of it in nothing", () => {
    const { locale } = whole.plan;
    const written = {
      ...whole,
      translations: [ofPlan("de"), ofComponent("de"), ofComponent("fr"), ofComponent(locale)],
    };
    const computed = (bundle: typeof written | typeof whole) => answerOf(bundle, 4, noHousehold);
    const frozen = documentOf(written);
    expect(comparePlans(computed(frozen), computed(written))).toEqual([]);
    const other = { ...written, translations: [ofPlan("de")] };
    expect(comparePlans(computed(frozen), computed(other))).toMatchObject([
      { kind: "TRANSLATION", path: ["translations", "de", "components", component, "title"], after: null },
    ]);
  });
});
