import type { Step } from "../../model/component.js";
import type { Path } from "../../problem.js";
import { waitInWords } from "../../prep-session/at-once-words.js";
import { lastCooking, type ColdRule } from "../../prep-session/cooling.js";
import { isCooking, isPreheating } from "../../prep-session/heating.js";
import type { Finding } from "./finding.js";
import type { ScaledLine } from "../scaled.js";

/** Words of cutting, in the languages of the fixed words; they only lead to something for the writer to look at. */
const cutting =
  /(?<!\p{L})(chop|chopped|slic(e|ed|ing)|dic(e|ed|ing)|minc(e|ed)|shred(ded)?|grat(e|ed)|cut|peel(ed)?|gehackt|hacken|geschnitten|schneiden|gerieben|reiben|gewürfelt|würfeln|schälen|geschält|hach(er|é|ée|és|ées|ez)|coup(er|é|ée|és|ées|ez)|émincé(e|s|es)?|émincer|râp(er|é|ée|és|ées)|picad[oa]s?|picar|cortad[oa]s?|cortar|rallad[oa]s?|rallar|tritat[oaie]|tritare|tagliat[oaie]|tagliare|gesneden|snijden|gehakt|hakken)(?!\p{L})/iu;

interface Made {
  readonly steps: readonly Step[];
  readonly lines: readonly ScaledLine[];
  readonly batches: number;
}

/** A step that takes the same time for any amount, but heats or cuts more than one batch. */
function fixedWithMore({ steps, batches }: Made, path: Path): Finding[] {
  if (batches <= 1) return [];
  return steps
    .filter((step) => step.growthStated === true && !isPreheating(step))
    .filter((step) => isCooking(step) || (step.attention === "HANDS_ON" && cutting.test(step.text)))
    .map((step) => ({
      code: "FIXED_FOR_MORE",
      severity: "LOOK",
      path: [...path, "steps", step.id],
      step: step.id,
      batches,
    }));
}

/** A food whose line says that it is cut, while no step that uses it cuts. Without any steps nobody says how it is made. */
function cutInNoStep({ steps, lines }: Made, path: Path): Finding[] {
  if (!steps.some((step) => step.lines.length > 0)) return [];
  return lines
    .filter(({ line, item }) => item.kind === "FOOD" && cutting.test(line.preparation ?? ""))
    .filter(({ line }) => !steps.some((step) => step.lines.includes(line.id) && cutting.test(step.text)))
    .map(({ line, item }) => ({
      code: "CUT_IN_NO_STEP",
      severity: "LOOK",
      path: [...path, "lines", line.id],
      item: item.kind === "FOOD" ? item.food : item.component,
    }));
}

/** Something hot after which nothing says how long it may stand. What needs no cold may stand as long as it likes. */
function hotMayWait({ steps }: Made, cold: ColdRule | null, path: Path): Finding[] {
  if (cold === null) return [];
  const last = new Set(lastCooking(steps));
  return steps.filter(isCooking).flatMap((step): Finding[] => {
    const next = steps.filter(({ after }) => after.includes(step.id));
    const open = next.filter((each) => each.maxWait === null && waitInWords(each.text) === null && !isCooking(each));
    const nothing = next.length === 0 && last.has(step);
    if (!nothing && open.length === 0) return [];
    return [{ code: "HOT_MAY_WAIT", severity: "LOOK", path: [...path, "steps", step.id], step: step.id }];
  });
}

/** What a session cannot make up for in the steps of a component. */
export const checkSessionSteps = (made: Made, cold: ColdRule | null, path: Path): readonly Finding[] => [
  ...fixedWithMore(made, path),
  ...cutInNoStep(made, path),
  ...hotMayWait(made, cold, path),
];

/** The same of a meal, which is eaten as soon as it is done. */
export const checkMealSteps = (made: Made, path: Path): readonly Finding[] => [
  ...fixedWithMore(made, path),
  ...cutInNoStep(made, path),
];
