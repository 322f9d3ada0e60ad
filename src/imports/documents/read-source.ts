import type { Source, SourceKind } from "../../domain/model/source.js";
import { failed, ok } from "../../domain/problem.js";
import type { Path, Result } from "../../domain/problem.js";
import { sourceKindWords } from "./schemas/shared-schemas.js";
import type { SourcesWritten, SourceWritten } from "./schemas/shared-schemas.js";
import { plainWord } from "./schemas/word-schema.js";

/** What stands in the title of a source that was only named by its kind. */
const usualTitles = {
  WRITER: "The writer's own measure",
  COMMON_PRACTICE: "Common practice, no source",
  INVENTED: "Invented for the demonstration",
} satisfies Record<Exclude<SourceKind, "PUBLISHED">, string>;

const kindOf = (word: string): Exclude<SourceKind, "PUBLISHED"> | null => {
  const kinds = ["WRITER", "COMMON_PRACTICE", "INVENTED"] as const;
  return kinds.find((kind) => sourceKindWords[kind] === plainWord(word)) ?? null;
};

/**
 * A source as written: in full, or as `name / section`, where the name is one of the document's `sources`,
 * `writer`, `common practice` or `invented`.
 */
export function readSource(written: SourceWritten, sources: SourcesWritten, path: Path): Result<Source> {
  if (typeof written !== "string") {
    return ok({ kind: written.kind, title: written.title, section: written.section });
  }
  const slash = written.indexOf(" / ");
  const name = (slash < 0 ? written : written.slice(0, slash)).trim();
  const section = slash < 0 ? null : written.slice(slash + 3).trim();
  const named = sources !== undefined && Object.hasOwn(sources, name) ? sources[name] : undefined;
  if (typeof named === "string") return ok({ kind: "PUBLISHED", title: named, section });
  if (named !== undefined) return ok({ kind: named.kind, title: named.title, section: section ?? named.section });
  const kind = kindOf(name);
  if (kind !== null) return ok({ kind, title: usualTitles[kind], section });
  const known = [...Object.keys(sources ?? {}), "writer", "common practice", "invented"].join(" | ");
  return failed([{ code: "BAD_SHAPE", path, expected: known, got: name }]);
}
