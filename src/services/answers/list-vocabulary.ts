import { vocabulary, type Vocabulary } from "../../domain/plan/vocabulary.js";
import { ok, type Path, type Result } from "../../domain/problem.js";
import type { Deps } from "../deps.js";
import { rulesToday } from "../rules/find-rules.js";
import { readLocale } from "./read-household.js";

export type { Vocabulary } from "../../domain/plan/vocabulary.js";

/** The closed lists of today, named in a locale; null: in English. */
export async function listVocabulary(deps: Deps, locale: string | null, path: Path): Promise<Result<Vocabulary>> {
  const read = readLocale(locale, path);
  return read.ok ? ok(vocabulary(await rulesToday(deps), read.value ?? "en")) : read;
}
