import type { TypedDocumentString } from "./generated.js";

/** What a service said was wrong with a question: one message for each error. */
export class Refused extends Error {
  override readonly name = "Refused";
}

interface GraphqlAnswer<Answer> {
  readonly data?: Answer | null;
  readonly errors?: readonly { readonly message: string }[];
}

/** A whole client: asks a service an operation, and answers in the operation's own type. */
export async function ask<Answer, Variables>(
  service: string,
  operation: TypedDocumentString<Answer, Variables>,
  variables: Variables,
): Promise<Answer> {
  const response = await fetch(new URL("/graphql", service), {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ query: operation.toString(), variables }),
  });
  const { data, errors = [] } = (await response.json()) as GraphqlAnswer<Answer>;
  if (errors.length > 0 || !data) throw new Refused(errors.map(({ message }) => message).join("\n"));
  return data;
}
