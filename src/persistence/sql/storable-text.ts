import { UnstorableText } from "../errors.js";

/** Whether the database can hold a text at all: no NUL, and no half of a surrogate pair. If not, it can also not be found. */
export const isStorable = (text: string): boolean => !/\0|\p{Surrogate}/u.test(text);

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

/** The same value with a replacement character for what no Postgres text can hold: what somebody is shown of a text that is refused. */
export function legible<T>(value: T): T {
  return JSON.parse(
    JSON.stringify(value, (_, inner: unknown) =>
      typeof inner === "string" ? inner.replaceAll(/\0|\p{Surrogate}/gu, "\ufffd") : inner,
    ),
  ) as T;
}
