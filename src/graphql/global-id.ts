/** What an id points at. A food has two kinds: as known today, and as a revision froze it. */
export type NodeRef =
  | { readonly kind: "Publisher"; readonly id: string }
  | { readonly kind: "Plan"; readonly revision: string }
  /** `language`: BCP 47, of a reader; left out: as it was written. */
  | {
      readonly kind: "Meal" | "Component";
      readonly revision: string;
      readonly slug: string;
      readonly language?: string;
    }
  | { readonly kind: "Food"; readonly revision: string | null; readonly slug: string; readonly language?: string };

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
      if (ref.language !== undefined) return [ref.kind, ref.revision ?? "", ref.slug, ref.language];
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
  if (typeof first !== "string" || second === null || third === null || third === "" || parts.length > 4) return null;
  const language = third === undefined ? {} : { language: third };
  if (kind === "Food") {
    if (second === undefined) return first === "" ? null : { kind, revision: null, slug: first };
    // A food of today that is named in a reader's language is in no revision.
    if (first === "" && third !== undefined) return { kind, revision: null, slug: second, ...language };
    return isUuid(first) ? { kind, revision: first, slug: second, ...language } : null;
  }
  if (!isUuid(first)) return null;
  if ((kind === "Meal" || kind === "Component") && second !== undefined)
    return { kind, revision: first, slug: second, ...language };
  if (third !== undefined) return null;
  if (kind === "Publisher") return { kind, id: first };
  return kind === "Plan" ? { kind, revision: first } : null;
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
