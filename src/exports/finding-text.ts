import type { Finding } from "../domain/plan/finding.js";
import { claimSentence } from "./claim-sentence.js";
import { stoppingSentence } from "./stopping-sentence.js";

const days = (count: number): string => `${Number(count.toFixed(1))} ${count === 1 ? "day" : "days"}`;

function sentence(finding: Finding): string {
  switch (finding.code) {
    case "APPLIANCE_NOT_IN_KITCHEN":
      return `The plan's kitchen has no "${finding.appliance}", so the session reckons with one. Name it in the kitchen, or take another.`;
    case "KEPT_BEYOND_RULES":
    case "NEEDS_THE_COLD":
    case "FORM_UNKNOWN":
      return stoppingSentence(finding);
    case "LINE_IN_NO_STEP":
      return `No step uses "${finding.item}". Name it in a step, or take the line out.`;
    case "AMOUNT_MISSING":
      return `"${finding.item}" has no amount, so nobody can tell how much to make.`;
    case "NOT_MEASURABLE":
      return `"${finding.item}" is less than a kitchen can measure at these servings. Write a larger batch, or "to taste".`;
    case "COMPONENT_NEVER_EATEN":
      return `"${finding.component}" is made and nobody eats it.`;
    case "COMPONENT_LEFT_OVER":
      return `${Math.round(finding.share * 100)} % of "${finding.component}" is left over. Use it in a meal, or allow smaller batches.`;
    case "KEPT_TOO_LONG":
      return `"${finding.subject}" keeps ${days(finding.days)}, and "${finding.meal}" is on day ${finding.day}. Freeze a share, make it later, or move the meal.`;
    case "NOBODY_SAYS_HOW_LONG":
      return `Nobody says how long "${finding.subject}" keeps. Give a keeping rule and who says so.`;
    case "OVEN_WITHOUT_TEMPERATURE":
      return `Step "${finding.step}" bakes and gives no temperature.`;
    case "OVEN_NOT_PREHEATED":
      return `Step "${finding.step}" bakes at ${finding.temperatureC} °C, and nothing heats the oven before it.`;
    case "FIXED_FOR_MORE":
      return `Step "${finding.step}" takes the same however much is made, and ${Number(finding.batches.toFixed(2))} batches are. Leave \`grows\` out, or write \`per batch\` or \`per load\`.`;
    case "CUT_IN_NO_STEP":
      return `"${finding.item}" is said to be cut, and no step that uses it cuts it. Say so in a step, so that its time counts.`;
    case "HOT_MAY_WAIT":
      return `Nothing says how long what step "${finding.step}" heats may stand after it. Write \`wait-at-most\` in the step that drains or chills it.`;
    case "CAUTION_NOT_NAMED":
      return `The caution "${finding.caution}" is due for "${finding.subject}". Readers are shown it; say so in your text too.`;
    case "CAUTION_UNKNOWN":
      return `"${finding.subject}" names the caution "${finding.caution}", which no rule knows.`;
    case "CLAIM_BROKEN":
    case "CLAIM_NOT_KNOWN":
    case "CLAIM_WITHOUT_RULE":
      return claimSentence(finding);
    case "SESSION_TOO_LONG":
      return `The session takes ${Math.ceil(finding.minutes)} minutes, and ${finding.promised} are promised.`;
  }
}

/** Where, what, and what to do, in English. */
export const findingText = (finding: Finding): string => `${finding.path.join(" > ")}: ${sentence(finding)}`;
