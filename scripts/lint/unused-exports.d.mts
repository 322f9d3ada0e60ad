export interface UnusedExport {
  readonly file: string;
  readonly name: string;
  readonly line: number;
  readonly column: number;
}
export function unusedExports(texts: ReadonlyMap<string, string>): readonly UnusedExport[];
