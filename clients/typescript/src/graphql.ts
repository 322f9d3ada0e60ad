import { failureOf } from "./answer.js";

/** The text of an operation, with its types where they were generated (typed documents of GraphQL Code Generator fit). */
export interface Operation<Data, Variables> {
  toString(): string;
  readonly __apiType?: ((variables: Variables) => Data) | undefined;
}

export interface GraphqlError {
  readonly message: string;
  readonly path?: readonly (string | number)[];
  readonly extensions: { readonly code: string };
}

/** Both at once where single fields failed. */
export interface GraphqlAnswer<Data> {
  readonly data: Data | null;
  readonly errors: readonly GraphqlError[];
}

interface Body<Data> {
  readonly data?: Data | null;
  readonly errors?: readonly GraphqlError[];
}

const isBody = (value: unknown): boolean =>
  typeof value === "object" && value !== null && ("data" in value || "errors" in value);

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    // Whoever answered was not the service: what was sent is told as it is.
    return text;
  }
}

export async function readGraphql<Data>(response: Response): Promise<GraphqlAnswer<Data>> {
  const value = parsed(await response.text());
  if (isBody(value)) {
    const { data = null, errors = [] } = value as Body<Data>;
    return { data, errors };
  }
  const { title, detail, status } = failureOf(response, value).problem;
  return { data: null, errors: [{ message: `${title}: ${detail}`, extensions: { code: `HTTP_${status}` } }] };
}
