import type { FastifyRequest } from "fastify";
import { amountLanguages, type AmountLanguage } from "../domain/quantity/reader-locale.js";
import { wordsFor } from "../exports/words/words-for.js";
import type { Words } from "../exports/words/words.js";
import { preferredLanguage } from "../http/preferred-language.js";

type Asking = Pick<FastifyRequest, "headers">;

/** One of the languages there are words in, or null: what is kept grows with their number alone. */
export const preferredOf = ({ headers }: Asking): AmountLanguage | null =>
  preferredLanguage(headers["accept-language"], amountLanguages);

/** The words of a page that is of no plan: those of the browser's language, else English. */
export const wordsOf = (request: Asking): Words => wordsFor(preferredOf(request) ?? "en");
