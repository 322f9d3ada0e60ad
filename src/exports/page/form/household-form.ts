import { measureSystems } from "../../../domain/model/amount.js";
import type { Plan } from "../../../domain/model/plan.js";
import { isTimeZone } from "../../../domain/time-zone.js";
import { capital } from "../../words/capital.js";
import type { NameBook } from "../../words/name-book.js";
import { countryName } from "../country-name.js";
import { attributes, markup, type Content } from "../markup.js";
import { codeName } from "../../words/rule-words.js";
import type { FormChoices } from "./form-choices.js";
import { choiceField, faultMarkup, selectField, severalField, strayFields, textField } from "./form-fields.js";
import type { FormFaults } from "./form-faults.js";
import { formFields, type PlanForm } from "./plan-form.js";
import { eatersRows, onHandRows } from "./row-fields.js";

export interface FormInput {
  readonly plan: Pick<Plan, "serves" | "measures" | "kitchen" | "region">;
  /** Where it is sent. */
  readonly action: string;
  readonly form: PlanForm;
  readonly choices: FormChoices;
  readonly faults: FormFaults;
  readonly book: NameBook;
}

/**
 * A reader's side of a plan, as a form that asks again for the same page. What was typed stays, right or wrong. It is sent in a body: what
 * may be seen comes back as an address, what somebody does not eat does not.
 */
export function householdForm(input: FormInput): Content {
  const { plan, action, form, faults, book } = input;
  const words = book.words.page;
  return markup`<form class="household" id="household" action="${action}" method="post" aria-label="${words.yourHousehold}">
<input type="hidden" name="written-for" value="${plan.serves}">
${form.revision !== "" && markup`<input type="hidden" name="revision" value="${form.revision}">`}
${form.locale !== "" && markup`<input type="hidden" name="locale" value="${form.locale}">`}
${(["form", "revision", "locale"] as const).map((field) => faultMarkup(field, faults))}
${textField("servings", words.howManyPeople, form, faults, {
  inputmode: "numeric",
  autocomplete: "off",
  placeholder: plan.serves,
  size: 5,
})}
${dietFields(input)}
${placeFields(input)}
${onHandRows(form, input.choices.things, faults, words)}
${startFields(input)}
${eatersRows(form, faults, words)}
${swapFields(input)}
${routeFields(input)}
${kitchenFields(input)}
<button type="submit">${words.update}</button>
</form>`;
}

function startFields({ form, faults, book }: FormInput): Content {
  const words = book.words.page;
  const isZone = form.zone.includes("/") && isTimeZone(form.zone);
  const city = isZone ? (form.zone.split("/").at(-1) ?? "") : form.zone;
  return markup`<fieldset><legend>${words.startLegend}</legend><div class="fields">
${textField("start", words.startField, form, faults, { type: isLocal(form.start) ? "datetime-local" : "text" })}
${textField("zone", words.cityField, { ...form, zone: city.replaceAll("_", " ") }, faults, { size: 18, placeholder: words.cityExample, autocomplete: "off" })}
${isZone && markup`<input type="hidden" name="zone-before" value="${form.zone}">`}
</div></fieldset>`;
}

/** What a browser's own field for a day and a time can show; anything else would be lost in it. */
const isLocal = (start: string): boolean => start === "" || /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}$/.test(start);

function placeFields({ plan, form, choices, faults, book }: FormInput): Content {
  const words = book.words.page;
  const own = plan.region === undefined ? words.notSet : words.asThePlan({ what: countryName(plan.region, book) });
  return markup`<fieldset><legend>${words.placeLegend}</legend><div class="fields">
${selectField("region", words.countryField, form.region, faults, [{ value: "", text: own }, ...choices.countries])}
${selectField("currency", words.currencyField, form.currency, faults, [{ value: "", text: words.notSet }, ...choices.currencies])}
${selectField("measures", words.measuresField, form.measures, faults, [
  { value: "", text: words.asWritten({ what: words.measures[plan.measures] }) },
  ...measureSystems.map((value) => ({ value, text: words.measures[value] })),
])}</div></fieldset>`;
}

/** Only where a kitchen differs from that of the plan. */
function kitchenFields({ plan, form, faults, book }: FormInput): Content {
  const words = book.words.page;
  const codes = Object.keys(plan.kitchen.appliances);
  const counts = [0, 1, 2, 3, 4, 6, 8];
  const values = codes.flatMap((code) => counts.map((count) => `${code}:${count}`));
  return markup`<fieldset><legend>${capital(words.ownKitchen)}</legend>${faultMarkup("appliances", faults)}<div class="fields">
${textField("cooks", words.cooksField, form, faults, { inputmode: "numeric", autocomplete: "off", size: 3, placeholder: plan.kitchen.cooks })}
${codes.map((code) =>
  choiceField(`f-appliance-${code}`, "appliances", capital(codeName("appliances", code, book.words)), form.appliances, [
    { value: "", text: words.asPlanned({ count: plan.kitchen.appliances[code] ?? 0 }) },
    ...counts.map((count) => ({ value: `${code}:${count}`, text: String(count) })),
  ]),
)}</div>${strayFields("appliances", form.appliances, values, words.notOffered)}</fieldset>`;
}

function dietFields({ form, choices, faults, book }: FormInput): Content {
  const words = book.words.page;
  return markup`<fieldset><legend>${words.dietsLegend}</legend>${faultMarkup("diets", faults)}
<ul class="choices">${choices.diets.map(
    ({ value, text }) =>
      markup`<li><label><input type="checkbox" name="${formFields.diets}"${attributes({ value, checked: form.diets.includes(value) })}> ${capital(text)}</label></li>`,
  )}</ul>${strayFields(
    "diets",
    form.diets,
    choices.diets.map(({ value }) => value),
    words.notOffered,
  )}
<div class="fields">
${severalField("avoid-allergens-typed", words.avoidField, form, faults, words.avoidExample)}
${severalField("dislikes-typed", words.dislikesField, form, faults, words.dislikesExample)}</div>
<p class="hint">${words.dietsPrivate} <a href="/privacy">${words.howItIsKept}</a></p></fieldset>`;
}

function swapFields({ form, choices, faults, book }: FormInput): Content {
  const words = book.words.page;
  const known = choices.swaps.flatMap(({ to }) => to.map(({ value }) => value));
  if (known.length === 0 && form.swaps.length === 0) return null;
  return markup`<fieldset><legend>${words.swapsLegend}</legend>${faultMarkup("swaps", faults)}<div class="fields">${choices.swaps.map(
    ({ from, name, to }) =>
      choiceField(`swap-${from}`, "swaps", name, form.swaps, [{ value: "", text: words.plainlyAsWritten }, ...to]),
  )}</div>${strayFields("swaps", form.swaps, known, words.notOffered)}</fieldset>`;
}

function routeFields({ form, choices, faults, book }: FormInput): Content {
  const words = book.words.page;
  const known = choices.routes.flatMap(({ ways }) => ways.map(({ value }) => value));
  if (known.length === 0 && form.route.length === 0 && form.routes === "") return null;
  return markup`<fieldset><legend>${words.routesLegend}</legend><div class="fields">
${selectField("routes", words.ingeneral, form.routes, faults, [
  { value: "", text: words.plainlyAsWritten },
  { value: "CHEAPEST", text: words.cheapest },
  { value: "LEAST_WORK", text: words.leastWork },
])}${choices.routes.map(({ component, title, ways }) =>
    choiceField(`route-${component}`, "route", title, form.route, [{ value: "", text: words.asInGeneral }, ...ways]),
  )}</div>${faultMarkup("route", faults)}${strayFields("route", form.route, known, words.notOffered)}</fieldset>`;
}
