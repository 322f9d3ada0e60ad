import type { Route } from "../../../domain/model/component.js";
import type { Money } from "../../../domain/model/amount.js";
import type { ScaledComponent } from "../../../domain/plan/scaled.js";
import { minutesText } from "../../words/minutes-text.js";
import { moneyText } from "../../words/money-text.js";
import type { NameBook } from "../../words/name-book.js";
import { wayTo } from "../ask.js";
import type { PlanForm } from "../form/plan-form.js";
import { markup, type Content } from "../markup.js";
import { foodMarkup } from "../names-markup.js";
import type { PlanView } from "../plan-view.js";
import { saidWith } from "../said-with.js";
import { inWritersLanguage } from "../writers-language.js";

/** What a route that is not taken would change, by `component:route`: minutes and money more, less with a minus; null: not known. */
export type RouteDifferences = ReadonlyMap<string, { readonly minutes: number | null; readonly money: Money | null }>;

/** Other ways to come by something, in view: a route that is not taken, a food that may stand for another. Each leads to the plan with it. */
export function waysPart(
  { component, route, lines }: ScaledComponent,
  { book }: PlanView,
  action: string,
  form: PlanForm,
  differences: RouteDifferences,
): Content {
  const words = book.words.page;
  const others = form.route.filter((each) => !each.startsWith(`${component.slug}:`));
  const routed = (name: string, way: Content) => {
    const key = `${component.slug}:${name}`;
    const text = [saidWith((named) => words.orWay({ name: named }), way), differenceText(differences.get(key), book)];
    return { text, form: { ...form, route: [...others, key] } };
  };
  const ways = [
    ...(route === null ? [] : [routed("as-written", words.asAuthorMakes)]),
    ...component.routes
      .filter(({ name }) => name !== route?.name)
      .map((other) => routed(other.name, routeMarkup(other, book))),
    ...lines.flatMap(({ item, line }) => {
      if (item.kind !== "FOOD" || line.item.kind !== "FOOD") return [];
      const written = line.item.food;
      const rest = form.swaps.filter((each) => !each.startsWith(`${written}:`));
      return line.swaps
        .filter(({ food }) => food !== item.food)
        .map(({ food }) => ({
          text: saidWith(
            (own, other) => words.orFood({ food: own, other }),
            foodMarkup(food, book),
            foodMarkup(item.food, book),
          ),
          form: { ...form, swaps: [...rest, `${written}:${food}`] },
        }));
    }),
  ];
  return (
    ways.length > 0 &&
    markup`<ul class="others">${ways.map((way) => markup`<li>${wayTo({ path: action, form: way.form, text: way.text })}</li>`)}</ul>`
  );
}

/** What the writer calls a route. */
export function routeMarkup(
  { name, called = name, kind }: Pick<Route, "name" | "called" | "kind">,
  book: NameBook,
): Content {
  const own = inWritersLanguage(called, book);
  return kind === "BUY" ? saidWith((named) => book.words.page.boughtWay({ name: named }), own) : own;
}

/** `: 1 h 10 min less, 3.65 XTS more` */
function differenceText(
  found: ReturnType<RouteDifferences["get"]>,
  { reader, words: { page: words } }: NameBook,
): string {
  if (found === undefined) return "";
  const { minutes, money } = found;
  const texts = [
    ...(minutes === null || minutes === 0
      ? []
      : [minutes < 0 ? words.less({ what: minutesText(-minutes) }) : words.more({ what: minutesText(minutes) })]),
    ...(money === null || Number(money.amount) === 0
      ? []
      : [
          money.amount.startsWith("-")
            ? words.less({ what: moneyText({ ...money, amount: money.amount.slice(1) }, reader) })
            : words.more({ what: moneyText(money, reader) }),
        ]),
  ];
  if (texts.length > 0) return `: ${texts.join(", ")}`;
  return minutes === null || money === null ? "" : `: ${words.sameTimeAndCost}`;
}
