// @ts-nocheck
export const folders: Readonly<
  Record<string, { readonly imports: readonly string[]; readonly types: readonly string[] }>
>;
export const domainLevels: readonly (readonly string[])[];
export function breach(from: string, to: string, typesOnly: boolean): string | null;
