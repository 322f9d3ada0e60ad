/** Rows as the driver gives them: JSON parsed, times as Date. */
export interface SqlAnswer {
  readonly rows: readonly Readonly<Record<string, unknown>>[];
}

/** Plain SQL, for what brings its own tables (the job queue). Without values, the text may hold several statements. */
export interface Sql {
  query(text: string, values?: readonly unknown[]): Promise<SqlAnswer>;
}
