import type { Source } from "../../domain/model/source.js";
import type { Path, Problem } from "../../domain/problem.js";
import { readSource } from "../documents/read-source.js";
import type { SourceWritten } from "../documents/schemas/shared-schemas.js";
import type { ruleHead } from "./rule-texts.js";
import type { z } from "zod";

type Heads = z.output<typeof ruleHead.sources>;

/** A source and who issued it; a source without a publisher is its own. */
interface IssuedSource {
  readonly source: Source;
  readonly publisher: string;
}

/** Stands in where a source could not be read; the problem beside it keeps the whole from being used. */
const unread: IssuedSource = { source: { kind: "PUBLISHED", title: "", section: null }, publisher: "" };

/** Reads `name / section` against the head of a rule file. What is wrong goes into `problems`. */
export function sourceReader(heads: Heads, problems: Problem[]): (written: SourceWritten, path: Path) => IssuedSource {
  const plain = Object.fromEntries(
    Object.entries(heads).map(([name, head]) => [
      name,
      typeof head === "string" ? head : { kind: head.kind, title: head.title, section: head.section },
    ]),
  );
  return (written, path) => {
    const read = readSource(written, plain, path);
    if (!read.ok) {
      problems.push(...read.problems);
      return unread;
    }
    const name = typeof written === "string" ? (written.split(" / ")[0] ?? "").trim() : null;
    const head = name !== null && Object.hasOwn(heads, name) ? heads[name] : undefined;
    const publisher = typeof head === "object" ? head.publisher : undefined;
    return { source: read.value, publisher: publisher ?? read.value.title };
  };
}
