import type { Component } from "../../domain/model/component.js";
import type { Food } from "../../domain/model/food.js";
import type { Plan } from "../../domain/model/plan.js";
import type { Translation } from "../../domain/model/translation.js";
import {
  componentText,
  foodText,
  packsText,
  planText,
  translationText,
} from "../../imports/documents/yaml/value-text.js";
import { hashOfText } from "../../persistence/drafts/draft-document.js";
import type { Draft, DraftDocument } from "../deps.js";

/** The text of a component's draft; one that was saved as a value is written out. */
export const componentDocument = ({ document, value }: Draft<Component>): DraftDocument =>
  document ?? writtenOut(componentText(value));

/** The text of a publisher's own food; one that was saved as a value is written out. */
export const foodDocument = ({ document, value }: Draft<Food>): DraftDocument =>
  document ?? writtenOut(foodText(value));

/** The text of the packs that a publisher adds to a food; one that was saved as a value is written out. */
export const packsDocument = ({ document, value }: Draft<Food>): DraftDocument =>
  document ?? writtenOut(packsText(value));

/** The text of a plan's draft; one that was saved as a value is written out. */
export const planDocument = ({ document, value }: Draft<Plan>): DraftDocument =>
  document ?? writtenOut(planText(value));

/** The text of a translation's draft; one that was saved as a value is written out. */
export const translationDocument = ({ document, value }: Draft<Translation>): DraftDocument =>
  document ?? writtenOut(translationText(value));

const writtenOut = (text: string): DraftDocument => ({ text, format: "YAML", hash: hashOfText(text) });
