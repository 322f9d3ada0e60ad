import { describe, expect, it } from "vitest";
import type { PlanAnswer } from "../../../src/domain/plan/plan-answer.js";
import type { SessionTask } from "../../../src/domain/prep-session/session.js";
import { mailHtml } from "../../../src/exports/document/mail-html.js";
import { planMarkdown } from "../../../src/exports/document/markdown.js";
import { blankForm } from "../../../src/exports/page/form/plan-form.js";
import { planPage } from "../../../src/exports/page/plan-page.js";
import { stepTime } from "../../../src/exports/words/step-time.js";
import { shippedRules } from "../../kit/answer-of.js";
import { step } from "../../kit/builders.js";
import { htmlLines } from "../../kit/html-page.js";
import { addresses, answerOf, demo } from "../demo-answer.js";

const links = { origin: "https://plans.example", style: "/p-assets/page.css", ticks: null, cook: null };

/** Every way out that shows a step beside amounts of a household, as one line of words. */
function waysOut(answer: PlanAnswer): Readonly<Record<string, string>> {
  const { bundle } = answer.scaled;
  const shown = { publication: answer.publication, bundle, form: blankForm, problems: [], links };
  const page = planPage({ ...shown, diets: shippedRules.allergens.diets, answer });
  const oneLine = (lines: readonly string[]): string => lines.join(" ").replace(/[*\\]/g, "").replace(/\s+/g, " ");
  return {
    markdown: oneLine([planMarkdown(answer, addresses, null)]),
    mail: oneLine(htmlLines(mailHtml(answer, addresses, null))),
    page: oneLine(htmlLines(page)),
  };
}

const time = String.raw`(?:(\d+) × )?(?:(\d+) h ?)?(?:(\d+) min)?`;

/** The minutes printed right after the text of a step: "3 × 1 h 20 min" are 240. */
function minutesAfter(document: string, text: string): readonly number[] {
  const rests = document.split(text.replace(/[*\\]/g, "").replace(/\s+/g, " ")).slice(1);
  return rests.flatMap((rest) => {
    const [all, loads, hours, minutes] = new RegExp(`^ ${time}`).exec(rest) ?? [];
    if (all === undefined || all.trim() === "") return [];
    return [Number(loads ?? 1) * (Number(hours ?? 0) * 60 + Number(minutes ?? 0))];
  });
}

/** What the session spends on a step: at least its tasks one after another; loads side by side count one by one. */
function spent(tasks: readonly SessionTask[]): { readonly least: number; readonly most: number } {
  const spans = tasks.map(({ startMinute, endMinute, load }) => ({
    minutes: endMinute - startMinute,
    loads: load === null ? 1 : load.last - load.first + 1,
  }));
  const rounded = tasks.length - 1;
  return {
    least: spans.reduce((sum, { minutes }) => sum + minutes, 0) - rounded,
    most: spans.reduce((sum, { minutes, loads }) => sum + minutes * loads, 0),
  };
}

describe("the time of a step beside the amounts of a household", () => {
  it.each([4, 40])("is what the session of %i spends on it, in every way out", async (servings) => {
    let sessions = 0;
    for (const bundle of demo.bundles) {
      const answer = await answerOf(bundle, servings);
      const { session } = answer;
      if (session === null) continue;
      sessions += 1;
      const steps = new Map<string, SessionTask[]>();
      for (const task of session.tasks) {
        const name = `${task.of.kind} ${task.of.slug} ${task.step}`;
        if (task.kind === "STEP") steps.set(name, [...(steps.get(name) ?? []), task]);
      }
      for (const [way, document] of Object.entries(waysOut(answer))) {
        for (const [name, tasks] of steps) {
          const { least, most } = spent(tasks);
          const printed = minutesAfter(document, tasks[0]?.text ?? "");
          const fits = printed.some((minutes) => minutes >= least && minutes <= most);
          if (most > 0 && !fits)
            expect.fail(`${way}, ${bundle.plan.slug}: ${name}: ${printed.join()} for ${least}–${most}`);
        }
      }
    }
    expect(sessions).toBeGreaterThan(0);
  });

  it("grows with work of the hands, is told by the load, and stays where it is fixed", () => {
    const work = { batches: 10, loads: 3 };
    expect(stepTime(step("cut", 8, { grows: "PER_BATCH" }), work)).toBe("1 h 20 min");
    expect(stepTime(step("roast", 40, { grows: "PER_LOAD", attention: "UNATTENDED" }), work)).toBe("3 × 40 min");
    expect(stepTime(step("soak", 720), work)).toBe("12 h");
    expect(stepTime(step("wait", 0), work)).toBeNull();
  });
});
