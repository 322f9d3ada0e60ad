import type { MeasureSystem } from "../../../domain/model/amount.js";
import type { Plan } from "../../../domain/model/plan.js";
import { attributes, markup, type Content } from "../markup.js";
import type { FormChoices } from "./form-choices.js";
import {
  choiceField,
  faultMarkup,
  selectField,
  strayFields,
  textField,
  textFields,
  type Field,
} from "./form-fields.js";
import type { FormFaults } from "./form-faults.js";
import { formFields, type PlanForm } from "./plan-form.js";

interface FormInput {
  readonly plan: Pick<Plan, "serves" | "measures">;
  /** Where it is sent. */
  readonly action: string;
  readonly form: PlanForm;
  readonly choices: FormChoices;
  readonly faults: FormFaults;
}

const measureNames: Readonly<Record<MeasureSystem, string>> = {
  METRIC: "grams, litres, spoons",
  METRIC_CUP: "metric with cups",
  AUSTRALIAN: "Australian cups and spoons",
  UK_IMPERIAL: "UK imperial",
  US_CUSTOMARY: "US cups, pounds, ounces",
};

/** Those that are folded away until they are wanted. */
const folded: readonly Field[] = [
  ...(["region", "currency", "measures", "diets", "eaters", "swaps"] as const),
  ...(["routes", "route", "onHand", "start", "zone", "cooks", "appliances"] as const),
];

/** A reader's side of a plan, as a form that asks again for the same page. What was typed stays, right or wrong. */
export function householdForm(input: FormInput): Content {
  const { plan, action, form, faults } = input;
  const open = folded.some((field) => faults.has(field));
  const given = folded.some((field) => form[field].length > 0);
  return markup`<form class="household" id="household" action="${action}" method="get" aria-label="Your household">
${form.revision !== "" && markup`<input type="hidden" name="revision" value="${form.revision}">`}
${form.locale !== "" && markup`<input type="hidden" name="locale" value="${form.locale}">`}
${(["form", "revision", "locale"] as const).map((field) => faultMarkup(field, faults))}
<div class="first">
${textField("servings", "How many eat", form, faults, {
  inputmode: "numeric",
  autocomplete: "off",
  placeholder: plan.serves,
  size: 5,
})}
<button type="submit">Work it out</button>
</div>
<details${attributes({ open })}><summary>Place, diets, swaps, what is in the house, starting time${given && markup` <span class="quiet">(some given)</span>`}</summary>
${placeFields(input)}
${dietFields(input)}
${swapFields(input)}
${routeFields(input)}
<fieldset><legend>In the house already</legend>${textFields(
    "onHand",
    "Food and amount",
    form,
    faults,
    "A food by its code, a colon, how much and a unit. After a semicolon, if you like, use-by= and a day.",
    "carrot:500 g",
  )}</fieldset>
${kitchenFields(input)}
<fieldset><legend>When you begin</legend><div class="fields">
${textField("start", "Day and time", form, faults, { type: isLocal(form.start) ? "datetime-local" : "text" })}
${textField("zone", "Time zone", form, faults, { size: 18, placeholder: "Europe/Lisbon", autocomplete: "off", spellcheck: "false" })}
</div></fieldset>
<button type="submit">Work it out</button>
</details>
</form>`;
}

/** What a browser's own field for a day and a time can show; anything else would be lost in it. */
const isLocal = (start: string): boolean => start === "" || /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}$/.test(start);

const placeFields = ({ plan, form, faults }: FormInput): Content =>
  markup`<fieldset><legend>Place and measures</legend><div class="fields">
${textField("region", "Country or state, as a code", form, faults, { size: 7, maxlength: 6, autocapitalize: "characters", placeholder: "GB, US-WA" })}
${textField("currency", "Currency, as a code", form, faults, { size: 5, maxlength: 3, autocapitalize: "characters", placeholder: "EUR" })}
${selectField("measures", "Measures", form.measures, faults, [
  { value: "", text: `as written (${measureNames[plan.measures]})` },
  ...Object.entries(measureNames).map(([value, text]) => ({ value, text })),
])}</div></fieldset>`;

const kitchenFields = ({ form, faults }: FormInput): Content =>
  markup`<fieldset><legend>Your kitchen</legend><div class="fields">
${textField("cooks", "How many cook", form, faults, { inputmode: "numeric", autocomplete: "off", size: 3, placeholder: "as the plan says" })}</div>
${textFields(
  "appliances",
  "Appliance and how many",
  form,
  faults,
  "Only where you have more or fewer than the plan assumes: the code of an appliance, a colon and how many.",
  "oven-shelf:1",
)}</fieldset>`;

const dietFields = ({ form, choices, faults }: FormInput): Content =>
  markup`<fieldset><legend>Who eats</legend>${textFields(
    "eaters",
    "People and share",
    form,
    faults,
    "Only if not everybody eats a whole serving: so many people, x, and their share. The people add up to how many eat.",
    "2x1/2",
  )}</fieldset>
<fieldset><legend>Diets to keep to</legend>${faultMarkup("diets", faults)}
<ul class="choices">${choices.diets.map(
    ({ value, text }) =>
      markup`<li><label><input type="checkbox" name="${formFields.diets}"${attributes({ value, checked: form.diets.includes(value) })}> ${value} <span class="quiet">${text}</span></label></li>`,
  )}</ul>${strayFields(
    "diets",
    form.diets,
    choices.diets.map(({ value }) => value),
  )}</fieldset>`;

function swapFields({ form, choices, faults }: FormInput): Content {
  const known = choices.swaps.flatMap(({ to }) => to.map(({ value }) => value));
  if (known.length === 0 && form.swaps.length === 0) return null;
  return markup`<fieldset><legend>Swaps the writer offers</legend>${faultMarkup("swaps", faults)}<div class="fields">${choices.swaps.map(
    ({ from, name, to }) =>
      choiceField(`swap-${from}`, "swaps", name, form.swaps, [{ value: "", text: "as written" }, ...to]),
  )}</div>${strayFields("swaps", form.swaps, known)}</fieldset>`;
}

function routeFields({ form, choices, faults }: FormInput): Content {
  const known = choices.routes.flatMap(({ ways }) => ways.map(({ value }) => value));
  if (known.length === 0 && form.route.length === 0 && form.routes === "") return null;
  return markup`<fieldset><legend>Make it or buy it</legend><div class="fields">
${selectField("routes", "In general", form.routes, faults, [
  { value: "", text: "as written" },
  { value: "CHEAPEST", text: "whatever costs least" },
  { value: "LEAST_WORK", text: "whatever is least work" },
])}${choices.routes.map(({ component, title, ways }) =>
    choiceField(`route-${component}`, "route", title, form.route, [{ value: "", text: "as in general" }, ...ways]),
  )}</div>${faultMarkup("route", faults)}${strayFields("route", form.route, known)}</fieldset>`;
}
