/**
 * Who says so. Every number that a reader could act on carries one of these.
 * `PUBLISHED` a table or rule anybody can look up; `WRITER` the plan's author measured it;
 * `COMMON_PRACTICE` the trade does it so and nobody published it; `INVENTED` made up for the demo.
 */
export type SourceKind = "PUBLISHED" | "WRITER" | "COMMON_PRACTICE" | "INVENTED";

export interface Source {
  readonly kind: SourceKind;
  readonly title: string;
  readonly section: string | null;
}
