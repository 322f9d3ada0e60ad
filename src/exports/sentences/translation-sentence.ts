import type { Finding } from "../../domain/plan/check/finding.js";
import type { Problem, TranslationProblem } from "../../domain/problem.js";

type TranslationFinding =
  | TranslationProblem
  | Extract<
      Finding,
      {
        readonly code: "TRANSLATION_INCOMPLETE" | "TRANSLATION_OUTDATED" | "TRANSLATION_ORPHANED" | "TRANSLATION_LINKS";
      }
    >;

const list = (names: readonly string[]): string => names.map((each) => `"${each}"`).join(", ");

/** The first of them, and how many more there are. */
const firstOf = (names: readonly string[], count: number): string =>
  count > names.length ? `${list(names)} and ${count - names.length} more` : list(names);

/** What is wrong with a translation, and what to do about it. */
export function translationSentence(finding: TranslationFinding): string {
  switch (finding.code) {
    case "TRANSLATION_NUMBERS":
      return (
        `The translation of "${finding.at}" into "${finding.language}" has other numbers: ${numbers(finding)}.` +
        " Correct them. If they are meant to differ, add it to `numbers-differ`."
      );
    case "TRANSLATION_INCOMPLETE": {
      const { language, translated, total, texts } = finding;
      return (
        `${translated} of ${total} texts are translated into "${language}". Readers get the others in the plan's own language:` +
        ` ${firstOf(texts, total - translated)}.`
      );
    }
    case "TRANSLATION_OUTDATED":
      return (
        `The originals of these texts changed after they were translated into "${finding.language}": ${firstOf(finding.texts, finding.count)}.` +
        " Translate them again. If the translation still holds, write today's date as `checked`."
      );
    case "TRANSLATION_ORPHANED":
      return `These texts were translated into "${finding.language}", and their originals are gone: ${firstOf(finding.texts, finding.count)}. Remove them, or name what they translate.`;
    case "TRANSLATION_LINKS":
      return `A text and its translation into "${finding.language}" have different links: ${finding.links.join(", ")}. Look whether that is meant.`;
  }
}

function numbers({ original, translated }: TranslationProblem): string {
  if (original.length === 0) return `${list(translated)} is not in the original`;
  if (translated.length === 0) return `${list(original)} of the original is missing`;
  return `${list(translated)} for ${list(original)}`;
}

/** Names a text that is there. */
export function translatesNothing({ of, nearest }: Extract<Problem, { readonly code: "TRANSLATES_NOTHING" }>): string {
  const offer = nearest.length > 0 ? ` Did you mean ${nearest.map((each) => `"${each}"`).join(" or ")}?` : "";
  return `There is no text "${of}" to translate.${offer}`;
}
