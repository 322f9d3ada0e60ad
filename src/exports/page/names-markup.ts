import type { Subject } from "../../domain/storage/guidance.js";
import type { NameBook } from "../words/name-book.js";
import { between, type Content } from "./markup.js";
import { inLanguage, inWritersLanguage } from "./writers-language.js";

/** The name of a food, which may be in another language than the page: not every food has a name in each. */
export const foodMarkup = (slug: string, book: NameBook): Content =>
  inLanguage(book.food(slug), book.foodLanguage(slug));

export const foodsMarkup = (slugs: readonly string[], book: NameBook): Content =>
  between(
    slugs.map((slug) => foodMarkup(slug, book)),
    ", ",
  );

/** A food, or what the writer calls a component or a meal. */
export const subjectMarkup = (subject: Subject, book: NameBook): Content =>
  subject.kind === "FOOD" ? foodMarkup(subject.slug, book) : inWritersLanguage(book.subject(subject), book);

export const subjectsMarkup = (subjects: readonly Subject[], book: NameBook): Content =>
  between(
    subjects.map((subject) => subjectMarkup(subject, book)),
    ", ",
  );
