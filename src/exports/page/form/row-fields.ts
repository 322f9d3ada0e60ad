import type { PageWords } from "../../words/words.js";
import { attributes, markup, type Content } from "../markup.js";
import type { Choice } from "./form-choices.js";
import type { FormFaults } from "./form-faults.js";
import { faultMarkup, marked, optionsMarkup } from "./form-fields.js";
import type { PlanForm } from "./plan-form.js";

/** Names of the two fields of each row; rows are counted from 1. `rest/form-body.ts` reads them back. */
export const rowNames = { eaters: ["people", "share"], onHand: ["have", "how-much"] } as const;

/** As many rows as were sent, and two more to fill in. */
const rowsOf = (sent: readonly (readonly [string, string])[]): readonly (readonly [string, string])[] => [
  ...sent,
  ["", ""],
  ["", ""],
];

const halves = (text: string, at: string): readonly [string, string] => {
  const cut = text.indexOf(at);
  return cut < 0 ? [text, ""] : [text.slice(0, cut).trim(), text.slice(cut + 1).trim()];
};

/** Groups of people who eat less, or more, than a whole serving. Those who eat a whole one are the rest. */
export function eatersRows(form: PlanForm, faults: FormFaults, words: PageWords): Content {
  const sent = form.eaters.map((each) => halves(each, "x")).filter(([, share]) => share !== "1");
  const shares: readonly Choice[] = Object.entries(words.share).map(([value, text]) => ({ value, text }));
  return markup`<fieldset><legend>${words.eatersLegend}</legend><p class="hint" id="hint-eaters">${words.eatersHint}</p>
${faultMarkup("eaters", faults)}${rowsOf(sent).map(([people, share], at) => {
    const [name, other] = rowNames.eaters.map((each) => `${each}-${at + 1}`);
    return markup`<div class="pair"><input${attributes({ name: name ?? "", value: people, inputmode: "numeric", autocomplete: "off", size: 3, placeholder: words.nobody, "aria-label": words.peopleField({ row: at + 1 }) })}${marked("eaters", faults, "hint-eaters")}>
<select${attributes({ name: other ?? "", "aria-label": words.shareField({ row: at + 1 }) })}>${optionsMarkup(shares, share === "" ? "1/2" : share)}</select></div>`;
  })}</fieldset>`;
}

/** What is in the house: a thing of this plan, and how much of it. What comes after a semicolon stays with the amount. */
export function onHandRows(form: PlanForm, things: readonly Choice[], faults: FormFaults, words: PageWords): Content {
  const sent = form.onHand.map((each) => halves(each, ":"));
  const options = [{ value: "", text: words.nothing }, ...things];
  return markup`<fieldset><legend>${words.onHandLegend}</legend><p class="hint" id="hint-on-hand">${words.onHandHint}</p>
${faultMarkup("onHand", faults)}${rowsOf(sent).map(([thing, amount], at) => {
    const [name, other] = rowNames.onHand.map((each) => `${each}-${at + 1}`);
    return markup`<div class="pair"><select${attributes({ name: name ?? "", "aria-label": words.haveField({ row: at + 1 }) })}>${optionsMarkup(options, thing)}</select>
<input${attributes({ name: other ?? "", value: amount, autocomplete: "off", size: 8, placeholder: "500 g", "aria-label": words.amountField({ row: at + 1 }) })}${marked("onHand", faults, "hint-on-hand")}></div>`;
  })}</fieldset>`;
}
