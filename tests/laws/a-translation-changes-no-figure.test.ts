import fc from "fast-check";
import { expect, it } from "vitest";
import { noHousehold } from "../../src/domain/model/household.js";
import type { PlanBundle } from "../../src/domain/model/plan.js";
import type { TranslatedText, TranslatedThing, Translation } from "../../src/domain/model/translation.js";
import { originalsOf } from "../../src/domain/plan/translate/texts-of.js";
import { scalePlan } from "../../src/domain/plan/scale-plan.js";
import { scaledSession } from "../../src/domain/plan/session/scaled-session.js";
import { cautionedThings } from "../../src/domain/storage/cautioned-things.js";
import { cautionsFor } from "../../src/domain/storage/cautions.js";
import { demo } from "../graphql/open-test-app.js";
import { shippedRules } from "../kit/answer-of.js";

// What is computed hangs on words of the writer here and there ("straight away", "rinse the chicken"); a translation must neither add such
// words nor take them away.

const words = fc.constantFrom(
  ...[
    "sofort",
    "straight away",
    "solange es noch heiß ist",
    "slow cooker",
    "kochen",
    "gekeimt",
    "roh",
    "abkühlen",
    "Mikrowelle",
    "x",
  ],
);

const things = ({ plan, components }: PlanBundle): readonly TranslatedThing[] => [
  { kind: "PLAN", slug: plan.slug },
  ...components.map(({ slug }): TranslatedThing => ({ kind: "COMPONENT", slug })),
];

const translationsOf = (bundle: PlanBundle) =>
  fc.tuple(
    ...things(bundle).map((of) =>
      fc
        .tuple(
          ...[...(originalsOf(bundle, of)?.values() ?? [])].map(({ path }) =>
            fc.record({ path: fc.constant(path), text: words }),
          ),
        )
        .map((texts: readonly TranslatedText[]): Translation => ({ of, language: "de", texts })),
    ),
  );

function figuresOf(bundle: PlanBundle, locale: string) {
  const household = { ...noHousehold, locale };
  const scaled = scalePlan(bundle, 5, household);
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
  const { components, meals } = scaled.value;
  const session = scaledSession(scaled.value, household, shippedRules.safety.classes, { conflictLimit: 300 });
  if (!session.ok) throw new Error(JSON.stringify(session.problems));
  const made = cautionedThings(components, meals, scaled.value.bundle.foods);
  return {
    language: scaled.value.bundle.plan.locale,
    batches: components.map(({ component, batches, loads, made: amount }) => [component.slug, batches, loads, amount]),
    needs: meals.map(({ lines }) => lines.map(({ need }) => need)),
    tasks: session.value.tasks.map(({ of, step, startMinute, endMinute }) => [of.slug, step, startMinute, endMinute]),
    minutes: session.value.totalMinutes,
    cautions: cautionsFor(made, shippedRules.safety, "GB").cautions.map(({ code, about }) => [code, about]),
  };
}

it.each(demo.bundles.map((bundle) => [bundle.plan.slug, bundle] as const))(
  "a translation changes no figure: %s",
  (_, bundle) => {
    const { language, ...written } = figuresOf(bundle, "en-GB");
    expect(language).toBe(bundle.plan.locale);
    fc.assert(
      fc.property(translationsOf(bundle), (translations) => {
        const { language: shown, ...figures } = figuresOf({ ...bundle, translations }, "de-AT");
        expect(shown).toBe("de");
        expect(figures).toEqual(written);
      }),
      { numRuns: 5 },
    );
  },
);
