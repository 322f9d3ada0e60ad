import type { KeepingClass } from "../../domain/model/keeping.js";
import type { Problem } from "../../domain/problem.js";
import { classesAround } from "../../domain/storage/keeping-classes.js";
import type { KeepingClassesDocument } from "./keeping-classes-schema.js";
import { duplicateIds, unknownWord } from "./rule-texts.js";

/** Classes as the model has them, and what is wrong: a code twice, an unknown wider class, classes that lie within each other. */
export function readKeepingClasses(document: KeepingClassesDocument): {
  readonly classes: readonly KeepingClass[];
  readonly problems: readonly Problem[];
} {
  const classes = document.classes.map(({ "by-analogy": byAnalogy, ...each }): KeepingClass => ({
    ...each,
    byAnalogy,
  }));
  const codes = classes.map(({ code }) => code);
  const problems = classes.flatMap(({ code, within }, index): Problem[] => {
    if (within === null) return [];
    const path = ["classes", index, "within"];
    if (!codes.includes(within)) return [unknownWord(path, within, codes)];
    const around = classesAround(within, classes).map((each) => each.code);
    return around.includes(code) ? [{ code: "BAD_SHAPE", path, expected: "a wider class", got: within }] : [];
  });
  return { classes, problems: [...duplicateIds("classes", codes, "code"), ...problems] };
}
