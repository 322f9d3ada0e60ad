import type { Component } from "../../domain/model/component.js";
import type { Plan } from "../../domain/model/plan.js";
import { componentText, planText } from "../../imports/documents/yaml/value-text.js";
import { hashOfText } from "../../persistence/drafts/draft-document.js";
import type { Draft, DraftDocument } from "../deps.js";

/** The text of a component's draft; one that was saved as a value is written out. */
export const componentDocument = ({ document, value }: Draft<Component>): DraftDocument =>
  document ?? writtenOut(componentText(value));

/** The text of a plan's draft; one that was saved as a value is written out. */
export const planDocument = ({ document, value }: Draft<Plan>): DraftDocument =>
  document ?? writtenOut(planText(value));

const writtenOut = (text: string): DraftDocument => ({ text, format: "YAML", hash: hashOfText(text) });
