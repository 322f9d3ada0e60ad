import type { Work } from "../../domain/counted-work.js";
import type { Measured, MeasureSystem } from "../../domain/model/amount.js";
import type { Food } from "../../domain/model/food.js";
import type { OnHand } from "../../domain/model/household.js";
import { foodSlug } from "../../domain/model/open-table-slug.js";
import type { PlanBundle } from "../../domain/model/plan.js";
import { failed, ok, type Path, type Problem, type Result } from "../../domain/problem.js";
import { parseAmount } from "../../domain/quantity/parse.js";
import { readSpokenAmount, type SpokenThing } from "../../domain/quantity/spoken-amount.js";
import { packNamesOf } from "../../exports/words/pack-names.js";

type Maybe<T> = T | null | undefined;

/** A line of what is on hand, as a caller writes it. */
export interface GivenOnHand {
  readonly food?: Maybe<string>;
  readonly component?: Maybe<string>;
  /** With `unit` a number, without it an amount as people say it: "half a bag". */
  readonly amount: string;
  readonly unit?: Maybe<string>;
  readonly useBy?: Maybe<string>;
  readonly asOtherForm?: Maybe<boolean>;
}

/** What the foods are that a reader has on hand, or does not like. */
export interface OnHandFoods {
  /** Slug by what was written. What is a slug already is not among them. */
  readonly slugs: ReadonlyMap<string, string>;
  /** Why what was written is no food, or none that is certain. */
  readonly faults: ReadonlyMap<string, (path: Path) => Problem>;
  /** Foods that no plan has, and those of which packs may be asked for, as known today. */
  readonly today: ReadonlyMap<string, Food>;
}

export const noFoods: OnHandFoods = { slugs: new Map(), faults: new Map(), today: new Map() };

/** The slug of a food by its slug, number or name. */
export function foodCalled(food: string, path: Path, { faults, slugs }: OnHandFoods): Result<string> {
  const fault = faults.get(food);
  return fault === undefined ? ok(slugs.get(food) ?? foodSlug(food)) : failed([fault(path)]);
}

interface OnHandContext {
  /** BCP 47 tag of the reader. */
  readonly locale: string | null;
  readonly measures: MeasureSystem;
  /** Where the reader shops. */
  readonly region: string | null;
  readonly bundles: readonly PlanBundle[];
  readonly foods: OnHandFoods;
  readonly work: Work;
}

/** A line of what is on hand: a food by its slug, number or name, or a component, and how much of it. */
export function readOnHand(given: GivenOnHand, path: Path, context: OnHandContext): Result<OnHand> {
  const food = given.food ?? null;
  const component = given.component ?? null;
  if ((food === null) === (component === null)) {
    const got = food === null ? "neither" : "both";
    return failed([{ code: "BAD_SHAPE", path, expected: "`food` or `component`", got }]);
  }
  const called = food === null ? ok(null) : foodCalled(food, [...path, "food"], context.foods);
  // Of what food it is decides what a word for an amount means.
  if (!called.ok) return called;
  const slug = called.value;
  const thing = slug === null ? componentThing(component ?? "", context) : foodThing(slug, context);
  const amount = readAmount(given, thing, path, context);
  if (!amount.ok) return amount;
  if (amount.value.low !== amount.value.high) {
    return failed([{ code: "BAD_SHAPE", path: [...path, "amount"], expected: "one number", got: "a range" }]);
  }
  const item =
    slug === null ? { kind: "COMPONENT" as const, component: component ?? "" } : { kind: "FOOD" as const, food: slug };
  return ok({
    item,
    amount: amount.value.high,
    unit: amount.value.unit,
    useBy: given.useBy ?? null,
    asOtherForm: given.asOtherForm ?? false,
  });
}

/** A number and a unit as a program writes them, or else as people do: "half a bag". */
function readAmount(
  { amount, unit }: GivenOnHand,
  thing: SpokenThing,
  path: Path,
  { locale, measures, region, work }: OnHandContext,
): Result<Measured> {
  const spoken = (text: string, at: string): Result<Measured> =>
    readSpokenAmount(text, thing, { locale, measures, region, path: [...path, at], packWords: packNamesOf, work });
  const word = unit?.trim() ?? "";
  if (word === "") return spoken(amount, "amount");
  const text = `${amount} ${word}`;
  const read = parseAmount(text, { locale: "en", measures, own: thing.measures, path });
  if (read.ok) return read;
  const said = spoken(text, "unit");
  if (said.ok || said.problems.some(({ code }) => code === "AMBIGUOUS_UNIT")) return said;
  return failed(read.problems.map((problem) => ({ ...problem, path: [...path, partAtFault(problem)] })));
}

/** The amount and its unit are read as one text, but a caller wrote two fields. */
const partAtFault = ({ code }: Problem): "unit" | "amount" =>
  code === "UNKNOWN_UNIT" || code === "AMBIGUOUS_UNIT" ? "unit" : "amount";

/** A food with the measures that the plans and the foods of today know, and the packs of today, or else those that were published. */
function foodThing(slug: string, { bundles, foods }: OnHandContext): SpokenThing {
  const now = foods.today.get(slug);
  const frozen = bundles.flatMap((bundle) => bundle.foods.find((food) => food.slug === slug) ?? []);
  const known = [...frozen, ...(now === undefined ? [] : [now])];
  const [first] = known;
  const packs = [...(now === undefined ? [] : [now]), ...frozen].find((food) => food.packs.length > 0)?.packs ?? [];
  return {
    slug,
    measures: known.flatMap((food) => food.measures),
    densities: first?.densities ?? [],
    packs,
    ...(first === undefined ? {} : { shoppedBy: first.shoppedBy }),
  };
}

function componentThing(slug: string, { bundles }: OnHandContext): SpokenThing {
  const known = bundles.flatMap((bundle) => bundle.components.find((each) => each.slug === slug) ?? []);
  return { slug, measures: known.flatMap((each) => each.measures), densities: known[0]?.densities ?? [], packs: [] };
}
