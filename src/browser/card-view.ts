import type { PlanCard } from "../exports/page/card-shape.js";
import { element } from "./elements.js";

/** Everything of a card below the control for servings. `got` holds the ids of what is ticked, and is kept up to date. */
export function cardView(card: PlanCard, got: Set<string>): readonly HTMLElement[] {
  const facts = [
    card.session === null ? null : `Session ${card.session}`,
    card.handsOn === null ? null : `${card.handsOn} with your hands`,
    card.perServing === null ? null : `${card.perServing} a serving of everything`,
  ].filter((fact) => fact !== null);
  const written = { lang: card.language, dir: card.direction };
  return [
    element("p", { class: "quiet" }, facts.join(", ")),
    element("h3", {}, "Eaten"),
    element(
      "ul",
      { role: "list" },
      ...card.meals.map(({ day, title }) =>
        element("li", {}, element("b", {}, day), " ", element("span", written, title)),
      ),
    ),
    element(
      "details",
      { open: "" },
      element("summary", {}, "To buy"),
      ...card.aisles.map((aisle) => aisleView(aisle, got)),
    ),
    element("h3", {}, "Allergens"),
    element(
      "dl",
      {},
      ...card.allergens.flatMap(({ presence, names }) => [
        element("dt", {}, presence),
        element("dd", {}, names.join(", ")),
      ]),
    ),
    element("h3", {}, "Take care"),
    element(
      "ul",
      { role: "list", class: "care" },
      ...card.cautions.map(({ text, source }) =>
        element("li", {}, element("p", {}, text), element("p", { class: "quiet" }, source)),
      ),
    ),
    element(
      "p",
      {},
      isWebAddress(card.page)
        ? element("a", { href: card.page }, "Everything about this plan")
        : element("span", {}, "Everything about this plan is on its own page"),
      element("span", { class: "quiet" }, ", by ", element("bdi", {}, card.publisher), `, revision ${card.revision}`),
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
