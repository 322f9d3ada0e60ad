import type { FastifyRequest } from "fastify";
import { amountLanguages, type AmountLanguage } from "../domain/quantity/reader-locale.js";
import { wordsFor } from "../exports/words/words-for.js";
import type { Words } from "../exports/words/words.js";
import { preferredLanguage } from "../http/preferred-language.js";
import { one, readQuery, type Query } from "./parameter.js";

type Asking = Pick<FastifyRequest, "headers" | "url">;

/** One of the languages there are words in, or null: what is kept grows with their number alone. */
export const preferredOf = ({ headers }: Pick<Asking, "headers">): AmountLanguage | null =>
  preferredLanguage(headers["accept-language"], amountLanguages);

/**
 * The words of a page that shows no plan: those of the locale that is asked for, else of the browser's language, else of what the page is about.
 *
 * @param about BCP 47 tag of the language of what it is about; English where it is about nothing
 * @param query what was asked, where it came in a body
 */
export const wordsOf = (request: Asking, about = "en", query: Query = readQuery(request.url)): Words =>
  wordsFor(one(query, "locale") ?? preferredOf(request) ?? about);
