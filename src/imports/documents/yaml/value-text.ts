import { stringify } from "yaml";
import type { Component } from "../../../domain/model/component.js";
import type { Food } from "../../../domain/model/food.js";
import type { Plan } from "../../../domain/model/plan.js";
import type { Translation } from "../../../domain/model/translation.js";
import {
  componentDocumentOf,
  foodDocumentOf,
  packsDocumentOf,
  planDocumentOf,
  translationDocumentOf,
} from "../plain-document.js";

/** A document, as YAML, that reads back as this food. */
export const foodText = (food: Food): string => stringify(foodDocumentOf(food));

/** A document, as YAML, that reads back as what this says of its food: packs, and nothing else. */
export const packsText = (packs: Food): string => stringify(packsDocumentOf(packs));

/** A document, as YAML, that reads back as this component. */
export const componentText = (component: Component): string => stringify(componentDocumentOf(component));

/** A document, as YAML, that reads back as this plan. */
export const planText = (plan: Plan): string => stringify(planDocumentOf(plan));

/** A document, as YAML, that reads back as this translation. */
export const translationText = (translation: Translation): string => stringify(translationDocumentOf(translation));
