import type { ScaledComponent } from "../../../domain/plan/scaled.js";
import type { InSlices } from "../../../domain/counted-work.js";
import { resolvedSteps } from "../../../domain/plan/session/resolved-steps.js";
import type { SessionTask } from "../../../domain/prep-session/session.js";
import { timesText } from "../../words/component-text.js";
import { markup, type Content } from "../markup.js";
import { part, sentences, type PlanView } from "../plan-view.js";
import { saidWith } from "../said-with.js";
import { inWritersLanguage } from "../writers-language.js";
import { equipmentMarkup, introductionMarkup, notesMarkup } from "./words-part.js";
import { stepsMarkup } from "./steps-with-lines.js";
import { swapNotes, titleMarkup } from "./swapped-foods.js";

/** What is cooked ahead, a row each: how much, and what is spare. Each unfolds to what goes in and how it is made. */
export function* componentsPartInSlices(view: PlanView, waysOf: (made: ScaledComponent) => Content): InSlices<Content> {
  const written: Content[] = [];
  for (const made of view.answer.scaled.components) {
    yield;
    written.push(componentMarkup(made, view, waysOf(made)));
  }
  return part("made", view.book.words.page.cookedAhead, markup`<div class="rows">${written}</div>`);
}

function componentMarkup(scaled: ScaledComponent, view: PlanView, ways: Content): Content {
  const { component, route, batches, made, used, leftOver, onHand, lines } = scaled;
  const { book } = view;
  const words = book.words.page;
  const show = (amount: typeof made): string => book.show(amount, component);
  const spare = leftOver.high > 0 ? show(leftOver) : null;
  const facts =
    batches === 0 ? [words.alreadyThere] : [show(made), ...(spare === null ? [] : [words.spare({ amount: spare })])];
  const told: readonly Content[] = [
    ...(batches === 0
      ? []
      : [
          `${words.makes({ made: show(made), times: timesText(batches, book.reader) })}; ${words.mealsUse({ used: show(used) })}${spare === null ? "" : `, ${words.spare({ amount: spare })}`}.`,
        ]),
    ...(onHand.high > 0 ? [words.youHave({ amount: show(onHand) })] : []),
    ...roundsText(scaled, view),
    ...(route === null
      ? []
      : [
          saidWith(
            (name) => (route.kind === "BUY" ? words.bought({ name }) : words.otherWay({ name })),
            inWritersLanguage(route.called ?? route.name, book),
          ),
        ]),
  ];
  return markup`<details class="row" id="made-${component.slug}"><summary><h3>${titleMarkup(component.title, lines, book)}</h3> <span class="facts">${facts.join(" · ")}</span></summary>
<p>${sentences(told)}</p>
${introductionMarkup(component, book)}
${ways}
${
  batches > 0 && [
    equipmentMarkup(component, book),
    swapNotes(lines, book),
    stepsMarkup(resolvedSteps(scaled), lines, scaled, book),
    notesMarkup(component, book),
  ]
}
</details>`;
}

/** How pots or trays of one thing share the heat: all at once, or in rounds. */
function roundsText({ component }: ScaledComponent, { answer, book }: PlanView): readonly string[] {
  const words = book.words.page;
  const sessions = answer.sessions.length > 1 ? answer.sessions.map(({ session }) => session) : [answer.session];
  const tasks = sessions.flatMap((session) => session?.tasks ?? []);
  const loads = tasks.filter(
    ({ of, load, attention }) =>
      of.kind === "COMPONENT" && of.slug === component.slug && load !== null && attention === "UNATTENDED",
  );
  const steps = [...new Set(loads.map(({ step }) => step))];
  const counts = steps.map((step) => roundsOf(loads.filter((task) => task.step === step)));
  const [most] = counts.toSorted((a, b) => b.rounds - a.rounds);
  if (most === undefined || most.parts < 2) return [];
  return [most.rounds > 1 ? words.inRounds({ count: most.rounds }) : words.allAtOnce({ count: most.parts })];
}

/** Parts of one step, and how many times the heat is filled with them. */
function roundsOf(tasks: readonly SessionTask[]): { readonly parts: number; readonly rounds: number } {
  let [rounds, end] = [0, -Infinity];
  for (const { startMinute, endMinute } of tasks.toSorted((a, b) => a.startMinute - b.startMinute)) {
    if (startMinute < end) continue;
    rounds += 1;
    end = endMinute;
  }
  return { parts: Math.max(0, ...tasks.map(({ load }) => load?.of ?? 0)), rounds };
}
