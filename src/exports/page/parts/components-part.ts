import type { ScaledComponent } from "../../../domain/plan/scaled.js";
import type { InSlices } from "../../../domain/counted-work.js";
import { resolvedSteps } from "../../../domain/plan/session/resolved-steps.js";
import { batchesText } from "../../words/component-text.js";
import { stepTime } from "../../words/step-time.js";
import { equipmentMarkup, introductionMarkup, notesMarkup } from "./words-part.js";
import { lineParts } from "./line-parts.js";
import { markup, type Content } from "../markup.js";
import { folded, lineMarkup, part, type PlanView } from "../plan-view.js";

/** What is made in the session: how much, in how many batches, for what, and what stays over. */
export function* componentsPartInSlices(view: PlanView): InSlices<Content> {
  const written: Content[] = [];
  for (const made of view.answer.scaled.components) {
    yield;
    written.push(componentMarkup(made, view));
  }
  return part("made", "What is made ahead", written);
}

function componentMarkup(scaled: ScaledComponent, view: PlanView): Content {
  const { component, route, batches, loads, made, used, leftOver, onHand, lines } = scaled;
  const { book } = view;
  const show = (amount: typeof made): string => book.show(amount, component);
  const nothing = batches === 0;
  const facts: readonly (readonly [string, Content])[] = [
    ["Make", nothing ? "nothing: it is in the house" : show(made)],
    ...(nothing
      ? []
      : [
          [
            "Batches",
            `${batchesText(batches, book.reader, book.words)}${loads > 1 ? `, in ${loads} goes` : ""}`,
          ] as const,
        ]),
    ...(onHand.high > 0 ? [["In the house", show(onHand)] as const] : []),
    ["Eaten", show(used)],
    ["Left over", leftOver.high > 0 ? show(leftOver) : "nothing"],
  ];
  return markup`<article class="packet">
<h3>${component.title}</h3>
${route !== null && markup`<p class="aside">${route.kind === "BUY" ? "Bought" : "Made another way"}: ${route.name}</p>`}
${introductionMarkup(component)}
<dl class="tally">${facts.map(([term, value]) => markup`<div><dt>${term}</dt><dd>${value}</dd></div>`)}</dl>
${!nothing && markup`<ul class="lines">${lines.map((line) => markup`<li>${lineMarkup(lineParts(line, book))}</li>`)}</ul>`}
${!nothing && equipmentMarkup(component, book.words)}
${!nothing && steps(scaled)}
${!nothing && notesMarkup(component, book.words)}
</article>`;
}

/** The steps also stand in the session, in the order in which they are done there. */
function steps(made: ScaledComponent): Content {
  const all = resolvedSteps(made);
  if (all.length === 0) return null;
  return folded(
    `How it is made, in ${all.length === 1 ? "1 step" : `${all.length} steps`}`,
    markup`<ol class="steps">${all.map((step) => {
      const time = stepTime(step, made);
      return markup`<li>${step.text}${time !== null && markup` <span class="quiet time">${time}</span>`}</li>`;
    })}</ol>`,
  );
}
