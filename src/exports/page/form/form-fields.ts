import { attributes, markup, type Content, type Html } from "../markup.js";
import type { Choice } from "./form-choices.js";
import type { FormFaults } from "./form-faults.js";
import { formFields, textsOfSeveral, type PlanForm } from "./plan-form.js";

type Field = keyof PlanForm;

/** Fields that hold one text, and those that are sent several times. */
type SingleField = { [F in Field]: PlanForm[F] extends string ? F : never }[Field];
type RepeatedField = Exclude<Field, SingleField>;

const idOf = (field: Field): string => `f-${formFields[field]}`;

/** What is wrong with a field, where it is said. */
export function faultMarkup(field: Field | "form", faults: FormFaults): Html | null {
  const texts = faults.get(field);
  if (texts === undefined) return null;
  return markup`<p class="fault" id="fault-${field}">${texts.join(" ")}</p>`;
}

export const marked = (field: Field, faults: FormFaults, hint: string | null = null): Html =>
  attributes({
    "aria-invalid": faults.has(field) ? "true" : null,
    "aria-describedby":
      [hint, faults.has(field) ? `fault-${field}` : null].filter((each) => each !== null).join(" ") || null,
  });

export function textField(
  field: SingleField,
  label: string,
  form: PlanForm,
  faults: FormFaults,
  more: Readonly<Record<string, string | number>>,
): Content {
  return markup`<div class="field"><label for="${idOf(field)}">${label}</label>
<input${attributes({ id: idOf(field), name: formFields[field], value: form[field], ...more })}${marked(field, faults)}>
${faultMarkup(field, faults)}</div>`;
}

/** One text for a field that holds several, with commas between them. */
export function severalField(
  name: keyof typeof textsOfSeveral,
  label: string,
  form: PlanForm,
  faults: FormFaults,
  placeholder: string,
): Content {
  const field = textsOfSeveral[name];
  const value = form[field].join(", ");
  return markup`<div class="field"><label for="${idOf(field)}">${label}</label>
<input${attributes({ id: idOf(field), name, value, placeholder, autocomplete: "off", size: 28 })}${marked(field, faults)}>
${faultMarkup(field, faults)}</div>`;
}

/** What was sent and is none of the options is kept as one, so that it is seen. */
export function optionsMarkup(options: readonly Choice[], chosen: string): Content {
  const stray: readonly Choice[] = options.some(({ value }) => value === chosen)
    ? []
    : [{ value: chosen, text: chosen }];
  return [...options, ...stray].map(
    ({ value, text, language = null }) =>
      markup`<option${attributes({ value, selected: value === chosen, lang: language })}>${text}</option>`,
  );
}

export function selectField(
  field: SingleField,
  label: string,
  chosen: string,
  faults: FormFaults,
  options: readonly Choice[],
): Content {
  return markup`<div class="field"><label for="${idOf(field)}">${label}</label>
<select${attributes({ id: idOf(field), name: formFields[field] })}${marked(field, faults)}>${optionsMarkup(options, chosen)}</select>
${faultMarkup(field, faults)}</div>`;
}

/** One of several fields of the same name: of the values sent, the one that is among its own options. */
export function choiceField(
  id: string,
  field: RepeatedField,
  label: Content,
  sent: readonly string[],
  options: readonly Choice[],
): Content {
  const chosen = options.find(({ value }) => value !== "" && sent.includes(value))?.value ?? "";
  return markup`<div class="field"><label for="${id}">${label}</label>
<select${attributes({ id, name: formFields[field] })}>${optionsMarkup(options, chosen)}</select></div>`;
}

/** Values that were sent and are none of the choices: kept, so that they can be put right or taken out. */
export const strayFields = (
  field: RepeatedField,
  sent: readonly string[],
  known: readonly string[],
  why: string,
): Content =>
  sent
    .filter((value) => !known.includes(value))
    .map(
      (value) =>
        markup`<label class="stray"><input type="checkbox" checked name="${formFields[field]}" value="${value}"> ${value} <span class="quiet">${why}</span></label>`,
    );
