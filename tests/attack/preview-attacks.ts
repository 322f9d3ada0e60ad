import { around, get, graphql, listOf, times, type AttackRequest, type Target } from "./attack-request.js";

/** Addresses of previews that nobody made, long ones, and many at once. */
export function previewAttacks({ publisher, plans }: Target): readonly AttackRequest[] {
  const slug = around(plans, 0);
  const secrets = [
    "a".repeat(200),
    "a".repeat(6_000),
    "%00",
    "%F0%9F%A5%95".repeat(40),
    "..%2f..%2flist",
    "'%20OR%20''='",
  ];
  const query = `?servings=200&${times(200, (at) => `on-hand=${String(at)}%20g%20${around(plans, at)}`, "&")}`;
  const guesses = listOf(20, (at) =>
    get("a guessed preview", `/preview/${publisher}/${slug}/${String(at).padStart(40, "x")}/list${query}`),
  );
  const aliases = (count: number, field: string): string => `{ ${times(count, (at) => `a${String(at)}: ${field}`)} }`;
  const scaled = "{ scaled(servings: 200) { meals { lines { amount { text } } } session { totalMinutes } } }";
  return [
    ...secrets.map((secret) => get("a preview of a wrong secret", `/preview/${publisher}/${slug}/${secret}${query}`)),
    ...guesses,
    ...[1, 10, 200].map((count) =>
      graphql(
        `${String(count)} guessed previews`,
        aliases(count, `preview(publisher: "${publisher}", slug: "${slug}", secret: "${"x".repeat(count)}") ${scaled}`),
      ),
    ),
    ...[1, 10, 60].map((count): AttackRequest => ({
      ...graphql(
        `${String(count)} previews of drafts`,
        aliases(count, `planDraft(publisher: "${publisher}", slug: "${slug}") { preview ${scaled} }`),
      ),
      authorised: true,
    })),
  ];
}
