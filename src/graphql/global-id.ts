/** What an id points at. A food has two kinds: as known today, and as a revision froze it. */
export type NodeRef =
  | { readonly kind: "Publisher"; readonly id: string }
  | { readonly kind: "Plan"; readonly revision: string }
  /** `language`: BCP 47, of a translation; left out: as it was written. */
  | {
      readonly kind: "Meal" | "Component";
      readonly revision: string;
      readonly slug: string;
      readonly language?: string;
    }
  | { readonly kind: "Food"; readonly revision: string | null; readonly slug: string };

const partsOf = (ref: NodeRef): readonly string[] => {
  switch (ref.kind) {
    case "Publisher":
      return [ref.kind, ref.id];
    case "Plan":
      return [ref.kind, ref.revision];
    case "Meal":
    case "Component":
      return [ref.kind, ref.revision, ref.slug, ...(ref.language === undefined ? [] : [ref.language])];
    case "Food":
      return ref.revision === null ? [ref.kind, ref.slug] : [ref.kind, ref.revision, ref.slug];
  }
};

/** The opaque id: base64url of the kind and its keys. */
export const globalId = (ref: NodeRef): string =>
  Buffer.from(partsOf(ref).map(encodeURIComponent).join(":")).toString("base64url");

/** The reverse; null for anything that `globalId` did not make. */
export function readGlobalId(id: string): NodeRef | null {
  const ref = refOf(Buffer.from(id, "base64url").toString("utf8").split(":"));
  // Decoding base64 forgives much, so only text that encodes to itself is one of ours.
  return ref !== null && globalId(ref) === id ? ref : null;
}

function refOf(encoded: readonly string[]): NodeRef | null {
  const parts = encoded.map(decodeText);
  const [kind, first, second, third] = parts;
  if (kind !== "Food" && !isUuid(first)) return null;
  if (kind === "Food" && typeof second === "string" && !isUuid(first)) return null;
  if (typeof first !== "string" || first === "" || second === null || parts.length > 4) return null;
  if (third !== undefined && kind !== "Meal" && kind !== "Component") return null;
  if (kind === "Food") {
    return second === undefined ? { kind, revision: null, slug: first } : { kind, revision: first, slug: second };
  }
  if (kind === "Publisher") return { kind, id: first };
  if (kind === "Plan") return { kind, revision: first };
  if ((kind === "Meal" || kind === "Component") && second !== undefined) {
    if (third === null || third === "") return null;
    return { kind, revision: first, slug: second, ...(third === undefined ? {} : { language: third }) };
  }
  return null;
}

/** What the database calls revisions and publishers; anything else was never given out. */
const isUuid = (text: string | null | undefined): boolean =>
  /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/.test(text ?? "");

function decodeText(text: string): string | null {
  try {
    return decodeURIComponent(text);
  } catch {
    // A stray percent sign: not an id of ours.
    return null;
  }
}
