export function importRings(imports: ReadonlyMap<string, readonly string[]>): string[][];
export function importsBelow(folder: string): Map<string, string[]>;
