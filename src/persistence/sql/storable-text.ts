import { UnstorableText } from "../errors.js";

/** NUL, and halves of surrogate pairs that stand alone. */
const unstorable = /\0|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/;

export const isStorable = (text: string): boolean => !unstorable.test(text);

/** The value itself. @throws UnstorableText with the path to the first text that no Postgres text can hold. */
export function storable<T>(value: T): T {
  const path = pathToUnstorable(value);
  if (path !== null) throw new UnstorableText(path);
  return value;
}

function pathToUnstorable(value: unknown): readonly (string | number)[] | null {
  if (typeof value === "string") return isStorable(value) ? null : [];
  if (typeof value !== "object" || value === null || value instanceof Date) return null;
  for (const [key, inner] of Object.entries(value)) {
    const path = isStorable(key) ? pathToUnstorable(inner) : [];
    if (path !== null) return [Array.isArray(value) ? Number(key) : key, ...path];
  }
  return null;
}
