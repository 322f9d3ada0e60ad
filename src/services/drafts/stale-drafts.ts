import type { Path, Problem } from "../../domain/problem.js";
import type { Data, DraftKind } from "../deps.js";

export interface DraftName {
  readonly kind: DraftKind;
  readonly slug: string;
}

interface Expected extends DraftName {
  readonly version: number;
}

const textOf = ({ kind, slug }: DraftName): string => `${kind} ${slug}`;

/** The version each draft is at now, by kind and slug; those that are not there are left out. */
export async function versionsOf(
  data: Data,
  publisher: string,
  names: readonly DraftName[],
): Promise<ReadonlyMap<string, number>> {
  const versions = await data.drafts.versions(names.map(({ kind, slug }) => ({ kind, publisher, slug })));
  return new Map(
    versions.flatMap((version, index) => {
      const name = names[index];
      return version === null || name === undefined ? [] : [[textOf(name), version] as const];
    }),
  );
}

/**
 * Drafts that are not at the version their writer read: all of them at once. A version for what is not among the documents
 * is a mistake too, since the writer means to overwrite something.
 */
export function staleDrafts(
  names: readonly DraftName[],
  expected: readonly Expected[],
  versions: ReadonlyMap<string, number>,
  path: Path,
): readonly Problem[] {
  const places = new Map(expected.map((each, index) => [textOf(each), { version: each.version, index }]));
  const written = new Set(names.map(textOf));
  const stale = names.flatMap((name): readonly Problem[] => {
    const wanted = places.get(textOf(name));
    const actual = versions.get(textOf(name)) ?? null;
    if ((wanted?.version ?? null) === actual) return [];
    const at = wanted === undefined ? [...path, "expected"] : [...path, "expected", wanted.index, "version"];
    return [
      { code: "STALE_DRAFT", path: at, draft: name.kind, slug: name.slug, expected: wanted?.version ?? null, actual },
    ];
  });
  const idle = expected.flatMap((each, index): readonly Problem[] =>
    written.has(textOf(each))
      ? []
      : [
          {
            code: "BAD_SHAPE",
            path: [...path, "expected", index],
            expected: "a component, food, packs, plan or translation among the documents",
            got: `the ${each.kind.toLowerCase()} ${each.slug}`,
          },
        ],
  );
  return [...stale, ...idle];
}
