import type { PlanCard } from "../exports/page/card-shape.js";
import { element } from "./elements.js";
import type { EmbedWords } from "./embed-words.js";

/** How much of a plan is shown. Keeping times, meals that come too late, allergens and cautions always are. */
export type CardView = "compact" | "list" | "whole";

interface CardChoices {
  readonly view: CardView;
  readonly pictures: boolean;
  readonly words: EmbedWords;
}

/** Everything of a card below the control for servings. `got` holds the ids of what is ticked, and is kept up to date. */
export function cardView(card: PlanCard, got: Set<string>, choices: CardChoices): readonly HTMLElement[] {
  const { view, words } = choices;
  return [
    ...(choices.pictures ? pictureView(card) : []),
    factsView(card, words),
    section("meals", words.meals, mealsView(card, view)),
    ...(view === "compact" ? [] : [listView(card, got, words)]),
    section(
      "allergens",
      words.allergens,
      element(
        "dl",
        {},
        ...card.allergens.flatMap(({ presence, names }) => [
          element("dt", {}, presence),
          element("dd", {}, names.join(", ")),
        ]),
      ),
    ),
    keepingView(card, words),
    section(
      "cautions",
      words.care,
      element(
        "ul",
        { role: "list", class: "care" },
        ...card.cautions.map(({ text, source }) =>
          element("li", {}, element("p", {}, text), element("p", { class: "quiet" }, source)),
        ),
      ),
    ),
    element(
      "p",
      { part: "link" },
      isWebAddress(card.page)
        ? element("a", { href: card.page }, words.whole)
        : element("span", {}, words.wholeElsewhere),
      element("span", { class: "quiet" }, `, ${words.by} `, element("bdi", {}, card.publisher), ` (${card.revision})`),
    ),
  ];
}

const section = (part: string, title: string, ...body: readonly HTMLElement[]): HTMLElement =>
  element("section", { part }, element("h3", {}, title), ...body);

function factsView({ session, handsOn, perServing }: PlanCard, words: EmbedWords): HTMLElement {
  const facts = [
    session === null ? null : `${words.session}: ${session}`,
    handsOn === null ? null : `${words.busy} ${handsOn}`,
    perServing === null ? null : `${perServing} ${words.perPerson}`,
  ];
  return element("p", { class: "quiet", part: "facts" }, facts.filter((fact) => fact !== null).join(", "));
}

/** Of the list alone, only the meals that need a word on when they are eaten. */
function mealsView({ meals, language, direction }: PlanCard, view: CardView): HTMLElement {
  const written = { lang: language, dir: direction };
  return element(
    "ul",
    { role: "list" },
    ...meals
      .filter(({ late }) => view !== "list" || late.length > 0)
      .map(({ day, title, late }) =>
        element(
          "li",
          {},
          element("b", {}, day),
          " ",
          element("span", written, title),
          ...late.map((advice) => element("p", { class: "late", part: "late" }, advice)),
        ),
      ),
  );
}

function listView({ aisles }: PlanCard, got: Set<string>, words: EmbedWords): HTMLElement {
  return element(
    "details",
    { open: "", part: "list" },
    element("summary", {}, words.list),
    ...aisles.map((aisle) => aisleView(aisle, got)),
  );
}

function keepingView({ keeping, keepingUnknown }: PlanCard, words: EmbedWords): HTMLElement {
  return section(
    "keeping",
    words.keeping,
    element(
      "ul",
      { role: "list" },
      ...keeping.map(({ what, where, keeps }) => element("li", {}, element("b", {}, what), ` ${where}: ${keeps}`)),
    ),
    ...(keepingUnknown.length === 0
      ? []
      : [element("p", { class: "quiet" }, `${words.keepingUnknown} ${keepingUnknown.join(", ")}.`)]),
  );
}

/** Fetched only where the page around asks for it: it needs `img-src`. */
function pictureView({ image }: PlanCard): readonly HTMLElement[] {
  if (image === null) return [];
  const sources = image.sources.filter(({ url }) => isWebAddress(url));
  const types = [...new Set(sources.map(({ type }) => type))];
  const plain = sources.filter(({ type }) => type === "image/jpeg").at(-1) ?? sources.at(-1);
  if (plain === undefined) return [];
  const sizes = "(min-width: 40rem) 40rem, 100vw";
  return [
    element(
      "figure",
      { part: "picture" },
      element(
        "picture",
        {},
        ...types.map((type) => {
          const own = sources.filter((each) => each.type === type);
          return element("source", { type, sizes, srcset: own.map(({ url, width }) => `${url} ${width}w`).join(", ") });
        }),
        element("img", {
          ...{ src: plain.url, alt: image.alt, loading: "lazy" },
          ...{ width: String(plain.width), height: String(plain.height) },
        }),
      ),
      image.credit === null ? null : element("figcaption", { class: "quiet" }, image.credit),
    ),
  ];
}

/** A card is whatever answered: an address with another scheme could run a script in the page around. */
const isWebAddress = (text: string): boolean => URL.canParse(text) && /^https?:$/.test(new URL(text).protocol);

function aisleView({ title, lines }: PlanCard["aisles"][number], got: Set<string>): HTMLElement {
  return element(
    "fieldset",
    {},
    element("legend", {}, title),
    element("ul", { role: "list" }, ...lines.map((line) => lineView(line, got))),
  );
}

function lineView(
  { id, food, take, notes }: PlanCard["aisles"][number]["lines"][number],
  got: Set<string>,
): HTMLElement {
  const box = element("input", { type: "checkbox" });
  box.checked = got.has(id);
  box.addEventListener("change", () => {
    if (box.checked) got.add(id);
    else got.delete(id);
  });
  const said = element("span", {}, element("b", {}, food), ` ${take}`);
  return element("li", {}, element("label", {}, box, said, element("small", { class: "quiet" }, ` ${notes}`)));
}
