import fc from "fast-check";
import type { Measured } from "../../../src/domain/model/amount.js";
import type { Component, Route, Step } from "../../../src/domain/model/component.js";
import type { Food, OwnMeasure } from "../../../src/domain/model/food.js";
import type { KeepingRule } from "../../../src/domain/model/keeping.js";
import type { Line, LineItem, SwapOwn } from "../../../src/domain/model/line.js";
import type { Meal, Plan } from "../../../src/domain/model/plan.js";
import type { PublisherFacts } from "../../../src/domain/model/publisher.js";
import type { Credit, WritersTexts, WritersWords } from "../../../src/domain/model/writers-words.js";
import type { Source } from "../../../src/domain/model/source.js";
import { rationalText } from "../../../src/domain/quantity/rational.js";

/** Values of the model, as wild as the model allows, for tests that send them through documents. */

const slug = fc.stringMatching(/^[a-z0-9]{1,8}(-[a-z0-9]{1,8}){0,2}$/);
const words = fc.oneof(
  fc.string({ unit: "grapheme", minLength: 1, maxLength: 30 }),
  fc.constantFrom("yes", "null", "1.000", "- a", "a: b", "# no", "true", "'", "~", "0x1", "2026-01-01", " ", "\n"),
);
/** Texts that are written as readers of YAML take them: over several lines, with blanks and marks at their ends. */
const text = fc.constantFrom(
  "Short.",
  "*Two* lines\nof one paragraph",
  "Ends with a line.\n",
  "\n  Begins with one.\n\n- a list\n- of [links](https://plans.example/a?b=c)\n",
  "\\# is none: a: b",
  "two blanks  \nend a line",
);
const textsOf = (): fc.Arbitrary<WritersTexts> =>
  fc.record({ introduction: text, notes: text, tips: text }, { requiredKeys: [] });
const wordsOfWriter = (): fc.Arbitrary<WritersWords> =>
  fc.record(
    {
      ...{ introduction: text, notes: text, tips: text },
      equipment: fc.constantFrom(["a large tray"], ["string", "two cloths"]),
      credits: fc.constantFrom<readonly Credit[]>(
        [{ name: "An aunt" }],
        [
          { name: "A book", licence: "CC BY 4.0" },
          { name: "A page", url: "https://plans.example/page", adapted: true },
        ],
      ),
    },
    { requiredKeys: [] },
  );

const maybe = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | null> => fc.option(value, { nil: null, freq: 2 });
const few = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T[]> => fc.array(value, { maxLength: 3 });
const amountNumber = fc.double({ min: 0.001, max: 9000, noNaN: true });

const source: fc.Arbitrary<Source> = fc.record({
  kind: fc.constantFrom("PUBLISHED", "WRITER", "COMMON_PRACTICE", "INVENTED"),
  title: words,
  section: maybe(words),
});

const rational = fc
  .tuple(fc.integer({ min: 0, max: 5000 }), fc.integer({ min: 1, max: 64 }))
  .map(([n, d]) => ({ text: rationalText(n, d), value: n / d }));

const measured = (units: readonly string[]): fc.Arbitrary<Measured> =>
  fc.tuple(rational, fc.option(rational), fc.constantFrom(...units)).map(([one, other, unit]) => {
    const [low, high] = [one, other ?? one].toSorted((a, b) => a.value - b.value);
    return { low: low?.text ?? "0", high: high?.text ?? "0", unit };
  });

const standard = ["g", "kg", "oz", "ml", "l", "us-cup", "metric-tbsp", "au-tbsp", "imp-pint", "piece"];

const keeping: fc.Arbitrary<KeepingRule> = fc.record({
  place: fc.constantFrom("FRIDGE", "FREEZER", "ROOM"),
  days: fc.integer({ min: 0, max: 365 }),
  container: maybe(words),
  condition: maybe(words),
  source,
});

/** Named so that no word of one measure is a word of another, or of a unit. */
const ownMeasures: fc.Arbitrary<OwnMeasure[]> = few(
  fc.record({ grams: amountNumber, millilitres: maybe(amountNumber), pieces: maybe(amountNumber), source }),
).map((list) =>
  list.map((facts, index) => ({ name: `own-${index}`, one: `thing${index}x`, many: `things${index}x`, ...facts })),
);

const density = fc.record({ form: maybe(words), gramsPerMl: fc.double({ min: 0.01, max: 20, noNaN: true }), source });

const distinct = <T>(list: readonly T[], key: (item: T) => string): T[] => [
  ...new Map(list.map((item) => [key(item), item])).values(),
];

/** One ingredient is what the food is said to contain. */
const withIngredient = (value: Food, said: Source | null): Food => {
  if (said === null) return value;
  const is = value.allergens.flatMap(({ code, presence }) => (presence === "CONTAINS" ? [code] : []));
  return { ...value, singleIngredient: { is, source: said } };
};

export const food: fc.Arbitrary<Food> = ownMeasures
  .chain((measures) => fc.tuple(plainFood(measures), maybe(source)))
  .map(([value, said]) => withIngredient(value, said));

const plainFood = (measures: readonly OwnMeasure[]): fc.Arbitrary<Food> =>
  fc.record<Food>({
    slug,
    names: fc
      .array(
        fc.record(
          {
            language: fc.constantFrom("en", "de", "fr", "pl", "sr-Latn"),
            region: maybe(fc.constantFrom("GB", "US", "XA", "419")),
            one: words,
            many: words,
            counted: words,
            also: few(words),
          },
          { requiredKeys: ["language", "region", "one", "many", "also"] },
        ),
        { minLength: 1, maxLength: 4 },
      )
      .map((names) => distinct(names, ({ language, region }) => `${language}-${region}`)),
    aisle: slug,
    shoppedBy: fc.constantFrom("MASS", "VOLUME", "COUNT"),
    ndbNo: maybe(fc.stringMatching(/^\d{5}$/)),
    densities: few(density),
    measures: fc.constant(measures),
    parts: few(
      fc.record(
        {
          name: slug,
          perPiece: measured(standard),
          after: few(slug),
          source,
          keepsAs: slug,
          keeping: fc.array(keeping, { minLength: 1, maxLength: 2 }),
          nutrients: fc.record({ per100g: fc.record({ proteinG: amountNumber }), source }),
        },
        { requiredKeys: ["name", "perPiece", "after", "source"] },
      ),
    ),
    edible: few(fc.record({ form: maybe(words), share: fc.double({ min: 0.01, max: 1, noNaN: true }), source })),
    yields: few(fc.record({ food: slug, gramsPerGram: amountNumber.map((each) => Math.min(each, 900)), source })),
    allergens: few(
      fc
        .record({
          code: slug,
          presence: fc.constantFrom(
            "CONTAINS" as const,
            "MAY_CONTAIN" as const,
            "DOES_NOT_CONTAIN" as const,
            "UNKNOWN" as const,
          ),
          source,
          traces: maybe(fc.constantFrom("MAY_CONTAIN" as const, "DOES_NOT_CONTAIN" as const, "UNKNOWN" as const)),
        })
        .map(({ traces, ...said }) => ({ ...said, ...(traces !== null && { traces }) })),
    ),
    diets: few(fc.record({ diet: slug, fits: maybe(fc.boolean()), source })),
    nutrients: maybe(
      fc.record({
        per100g: fc.record(
          { energyKcal: amountNumber, proteinG: amountNumber, vitaminCMg: amountNumber, waterG: fc.constant(0) },
          { requiredKeys: [] },
        ),
        source,
      }),
    ),
    keepsAs: maybe(slug),
    keeping: few(keeping),
    packs: few(
      fc.record(
        {
          id: slug,
          name: words,
          content: measured([...standard, ...measures.map(({ name }) => `own:${name}`)]),
          price: maybe(fc.constant({ amount: "1.25", currency: "XTS" })),
          region: maybe(fc.constant("XA")),
          seen: fc.constant("2026-03-02"),
          source,
          loose: fc.constantFrom({ step: null }, { step: { low: "25", high: "25", unit: "g" } }),
        },
        { requiredKeys: ["id", "name", "content", "price", "region", "seen", "source"] },
      ),
    ),
    alwaysThere: fc.boolean(),
  });

/** At least one thing is otherwise: a swap of which nothing is has no `own`. */
const swapOwn: fc.Arbitrary<SwapOwn> = fc
  .record(
    {
      preparation: words,
      form: words,
      yield: measured(standard),
      keepsAs: slug,
      steps: fc.array(
        fc
          .tuple(fc.nat(9), fc.record({ text: words, minutes: fc.integer({ min: 0, max: 900 }) }, { requiredKeys: [] }))
          .map(([id, said]) => ({ id: `s${id}`, ...said })),
        { minLength: 1, maxLength: 2 },
      ),
    },
    { requiredKeys: [] },
  )
  .filter((own) => Object.keys(own).length > 0);

const line = (foods: readonly Food[], components: readonly Pick<Component, "slug" | "measures">[]) => {
  const items = [
    ...foods.flatMap((each) => [
      { item: { kind: "FOOD", food: each.slug, part: null } as LineItem, measures: each.measures },
      { item: { kind: "FOOD", food: each.slug, part: "zest" } as LineItem, measures: each.measures },
    ]),
    ...components.map((each) => ({
      item: { kind: "COMPONENT", component: each.slug } as LineItem,
      measures: each.measures,
    })),
  ];
  const rules = fc.oneof(
    fc.constantFrom("PROPORTIONAL" as const, "PER_BATCH" as const).map((rule) => ({ rule, exponent: null })),
    fc.constantFrom(0.5, 0.85, 1).map((exponent) => ({ rule: "POWER" as const, exponent })),
    fc.constant({ rule: "TO_TASTE" as const, exponent: null }),
  );
  return fc
    .tuple(
      fc.constantFrom(...items),
      rules,
      fc.constantFrom(
        {},
        { eaten: "0" },
        { eaten: "2/5" },
        { eaten: "1/8" },
        { each: { low: "6", high: "13/2", unit: "oz" } },
      ),
    )
    .chain(([{ item, measures }, rule, eaten]) =>
      fc
        .record({
          item: fc.constant(item),
          written: words,
          amount:
            rule.rule === "TO_TASTE"
              ? fc.constant(null)
              : measured([...standard, "batch", ...measures.map(({ name }) => `own:${name}`)]),
          extra: fc.boolean(),
          measured: fc.constantFrom("AS_BOUGHT" as const, "READY" as const),
          form: maybe(words),
          preparation: maybe(words),
          rule: fc.constant(rule.rule),
          exponent: fc.constant(rule.exponent),
          optional: fc.boolean(),
          mark: maybe(words),
          swaps: few(
            fc.record({
              food: fc.constantFrom(...foods.map((each) => each.slug)),
              ratio: rational.map(({ text }) => text),
              diets: few(slug),
              note: maybe(words),
              own: maybe(swapOwn),
            }),
          ).map((swaps) => swaps.map(({ own, ...swap }) => ({ ...swap, ...(own !== null && { own }) }))),
        })
        .map((each) => ({ ...each, ...eaten })),
    );
};

const lines = (...of: Parameters<typeof line>): fc.Arbitrary<Line[]> =>
  few(line(...of)).map((list) => list.map((each, index) => ({ id: `l${index}`, ...each })));

const steps = (ids: readonly string[]): fc.Arbitrary<Step[]> =>
  few(
    fc
      .record({
        text: words,
        minutes: fc.integer({ min: 0, max: 900 }),
        attention: fc.constantFrom("HANDS_ON" as const, "UNATTENDED" as const),
        appliance: maybe(slug),
        temperatureC: maybe(fc.integer({ min: -20, max: 250 })),
        grows: fc.constantFrom("FIXED" as const, "PER_BATCH" as const, "PER_LOAD" as const),
        loadBatches: maybe(rational.map(({ text }) => text)),
        minWait: fc.integer({ min: 0, max: 90 }),
        maxWait: maybe(fc.integer({ min: 90, max: 900 })),
        eveningBefore: fc.boolean(),
        lines: fc.subarray([...ids]),
        rare: fc.record(
          {
            leaves: slug,
            washMinutes: fc.integer({ min: 0, max: 30 }),
            heatUpMinutes: fc.integer({ min: 0, max: 60 }),
            chills: fc.boolean(),
            drains: fc.boolean(),
          },
          { requiredKeys: [] },
        ),
        stated: fc.boolean(),
      })
      .map(({ rare, stated, ...step }) => ({
        ...step,
        ...rare,
        ...(stated && step.grows === "FIXED" ? { growthStated: true as const } : {}),
      })),
  ).map((list) =>
    list.map((each, index) => ({ id: `s${index}`, after: index > 1 ? ["s0", `s${index - 1}`] : [], ...each })),
  );

type Unworked<T extends { readonly lines: readonly Line[] }> = Omit<T, "steps" | "lines"> & { readonly lines: Line[] };

const withSteps = <T extends { readonly lines: Line[] }>(value: fc.Arbitrary<T>) =>
  value.chain((each) => steps(each.lines.map(({ id }) => id)).map((list) => ({ ...each, steps: list })));

export const component = (foods: readonly Food[]): fc.Arbitrary<Component> =>
  ownMeasures.chain((measures) =>
    withSteps(
      fc
        .record<Unworked<Component>>({
          slug,
          title: words,
          lines: lines(foods, []),
          yield: fc.record({
            amount: measured([...standard, ...measures.map(({ name }) => `own:${name}`)]),
            source,
          }),
          batch: fc.record({
            min: rational.map(({ text }) => text),
            max: maybe(rational.map(({ text }) => text)),
            increment: maybe(rational.map(({ text }) => text)),
          }),
          densities: few(density),
          measures: fc.constant(measures),
          keepsAs: maybe(slug),
          keeping: few(keeping),
          routes: few(
            withSteps(
              fc.record<Unworked<Route>>({
                name: words,
                kind: fc.constantFrom("MAKE" as const, "BUY" as const),
                lines: lines(foods, []),
                keepsAs: maybe(slug),
                keeping: few(keeping),
              }),
            ),
          ),
          cautions: few(slug),
        })
        .chain((made) => wordsOfWriter().map((said) => ({ ...made, ...said }))),
    ),
  );

export const plan = (foods: readonly Food[], components: readonly Component[]): fc.Arbitrary<Plan> =>
  fc
    .record({
      publisher: slug,
      slug,
      title: words,
      summary: maybe(words),
      locale: fc.constantFrom("en", "en-US", "de", "fr-CA"),
      measures: fc.constantFrom("US_CUSTOMARY", "METRIC_CUP", "AUSTRALIAN", "UK_IMPERIAL", "METRIC"),
      serves: fc.integer({ min: 1, max: 200 }),
      meals: fc.array(
        withSteps(
          fc
            .record<Unworked<Meal>>({
              slug,
              title: words,
              day: fc.integer({ min: 0, max: 14 }),
              serves: fc.integer({ min: 1, max: 200 }),
              lines: lines(foods, components),
            })
            .chain((meal) => fc.constantFrom(meal, { ...meal, at: "07:30" }, { ...meal, at: "21:05" }))
            .chain((meal) => textsOf().map((texts) => ({ ...meal, ...texts }))),
        ),
        { minLength: 1, maxLength: 3 },
      ),
      kitchen: fc.record({
        cooks: fc.integer({ min: 1, max: 4 }),
        appliances: fc.dictionary(slug, fc.integer({ min: 0, max: 8 }), { maxKeys: 3 }),
      }),
      promisedMinutes: maybe(fc.integer({ min: 1, max: 600 })),
      claims: few(slug),
      region: maybe(fc.constantFrom("GB", "US-WA", "XA")),
      currency: maybe(fc.constantFrom("XTS", "EUR")),
      tags: fc.constantFrom([], ["one tray"], ["winter", "Zażółć"]),
      licence: maybe(fc.constant("CC BY-SA 4.0")),
      said: wordsOfWriter(),
    })
    .map(({ region, currency, tags, licence, said, ...plan }) => ({
      ...plan,
      ...(region !== null && { region }),
      ...(currency !== null && { currency }),
      ...(tags.length > 0 && { tags }),
      ...(licence !== null && { licence }),
      ...said,
    }));

export const publisherFacts: fc.Arbitrary<PublisherFacts> = fc.record({
  region: maybe(fc.constantFrom("GB", "US-WA", "XA")),
  currency: maybe(fc.constantFrom("XTS", "EUR")),
  languages: fc.uniqueArray(fc.constantFrom("en", "de-CH", "sr-Latn"), { maxLength: 3 }),
  description: maybe(words),
  website: maybe(fc.constantFrom("https://plans.example/", "http://plans.example/a_b?c=d")),
});
