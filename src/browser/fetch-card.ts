import type { PlanCard } from "../exports/page/card-shape.js";

/** What came back: a plan, or what to tell the reader. */
export type Fetched =
  | { readonly card: PlanCard }
  | {
      readonly told: string;
      /** HTTP status; null: nothing answered. */
      readonly status: number | null;
    };

/** A problem document (RFC 9457), as far as readers are told of it. */
interface Refused {
  readonly problems?: readonly { readonly text: string }[];
}

/** The address of a plan's card: that of its page, and how many eat. null: no address of a page. */
export function cardAddress(src: string, servings: string | null, language: string | null): URL | null {
  if (!URL.canParse(src, document.baseURI)) return null;
  const address = new URL(src, document.baseURI);
  if (!/^https?:$/.test(address.protocol)) return null;
  address.pathname = `${address.pathname.replace(/\/$/, "")}/card`;
  address.hash = "";
  if (servings !== null && servings !== "") address.searchParams.set("servings", servings);
  if (language !== null && language !== "") address.searchParams.set("locale", language);
  return address;
}

/** @param outOfReach what to tell where nothing answers that can be read */
export async function fetchCard(address: URL, signal: AbortSignal, outOfReach: string): Promise<Fetched> {
  const answer = await fetch(address, {
    signal,
    credentials: "omit",
    referrerPolicy: "no-referrer",
    headers: { accept: "application/json" },
  }).catch((error: unknown) => {
    // A network that fails is a TypeError; that this reader no longer waits is the caller's affair.
    if (error instanceof TypeError) return null;
    throw error;
  });
  if (answer === null) return { told: outOfReach, status: null };
  const { status } = answer;
  if (status >= 500) return { told: outOfReach, status };
  const value = (await answer.json().catch(() => null)) as PlanCard | Refused | null;
  if (value === null) return { told: outOfReach, status };
  if (answer.ok && "meals" in value) return { card: value };
  const told = "problems" in value ? (value.problems ?? []).map(({ text }) => text).join(" ") : "";
  return { told: told === "" ? outOfReach : told, status };
}
