import { z } from "zod";
import { readTokenText } from "../../services/access/token-text.js";
import type { ClientSettings } from "../setup/environment.js";
import { CommandFailed, exitCodes, usage } from "./outcome.js";
import { failureOf, type Service } from "./service.js";

/** Where a service listens unless told. */
export const usualServer = "http://127.0.0.1:4000";

/** A publish of many plans takes its time; nobody waits longer than this for one answer. */
const patienceMs = 120_000;
const uploadPatienceMs = 3_600_000;

const answerSchema = z.object({
  data: z.record(z.string(), z.unknown()).nullish(),
  errors: z
    .array(z.object({ message: z.string(), extensions: z.record(z.string(), z.unknown()).optional() }))
    .optional(),
});

/** A service over HTTP, which also takes files. */
export interface RemoteService extends Service {
  /** Hands a file in as it is, and answers with the JSON that the service answers. `path`: below its address, with parameters. */
  upload(path: string, file: Blob): Promise<unknown>;
  /** The bytes of a file, as they arrive. */
  download(path: string): Promise<AsyncIterable<Uint8Array>>;
}

/** Of a problem document (RFC 9457), as this service writes them. */
const refusalSchema = z.object({
  detail: z.string(),
  problems: z.array(z.object({ code: z.string(), message: z.string() })).default([]),
});

/** A service at an address. @throws CommandFailed for an address or a token that cannot be one. */
export function openRemote({ server, token }: ClientSettings): RemoteService {
  const root = rootOf(server ?? usualServer);
  const address = new URL("graphql", root);
  // Wrong letters are found here, so that they are not sent anywhere.
  if (token !== null && readTokenText(token) === null) {
    throw usage("The access token is mistyped or incomplete. Copy it again.");
  }
  const shown = { accept: "application/json", ...(token === null ? {} : { authorization: `Bearer ${token}` }) };
  return {
    ask: async <Answer, Variables>(operation: object, variables: Variables) => {
      const body = JSON.stringify({ query: operation.toString(), variables });
      const headers = { ...shown, "content-type": "application/json" };
      const response = await send(address, { headers, body }, patienceMs);
      const answer = answerSchema.safeParse(parsed(await response.text()));
      if (!answer.success) throw notOurs(address, response);
      const { data, errors = [] } = answer.data;
      if (errors.length > 0) throw failureOf(errors);
      if (!data) throw notOurs(address, response);
      // The types are generated from the schema that the service answers by.
      return data as Answer;
    },
    upload: async (path, file) => {
      const headers = { ...shown, "content-type": "application/octet-stream" };
      const response = await send(new URL(path, root), { headers, body: file }, uploadPatienceMs);
      const answer = parsed(await response.text());
      if (response.ok && answer !== null) return answer;
      const refusal = refusalSchema.safeParse(answer);
      throw refusal.success && response.status < 500
        ? refusedUpload(response.status, refusal.data)
        : notOurs(root, response);
    },
    download: async (path) => {
      const response = await send(
        new URL(path, root),
        { headers: { ...shown, accept: "*/*" } },
        uploadPatienceMs,
        "GET",
      );
      if (response.ok && response.body !== null) return arriving(response.body, root);
      const refusal = refusalSchema.safeParse(parsed(await response.text()));
      throw refusal.success && response.status < 500
        ? refusedUpload(response.status, refusal.data)
        : notOurs(root, response);
    },
    close: () => Promise.resolve(),
  };
}

async function* arriving(body: AsyncIterable<Uint8Array>, root: URL): AsyncGenerator<Uint8Array> {
  try {
    yield* body;
  } catch (error) {
    if (!(error instanceof Error)) throw error;
    throw new CommandFailed(
      exitCodes.unreachable,
      "CUT_OFF",
      `The answer of ${root.origin} was cut off (${reason(error, uploadPatienceMs)}). Try again.`,
    );
  }
}

function refusedUpload(status: number, { detail, problems }: z.infer<typeof refusalSchema>): CommandFailed {
  const exit = status === 401 || status === 403 ? exitCodes.notAllowed : exitCodes.problems;
  const [first] = problems;
  if (first === undefined)
    return new CommandFailed(exit, exit === exitCodes.notAllowed ? "FORBIDDEN" : "REFUSED", detail);
  return new CommandFailed(
    exit,
    first.code,
    problems.map(({ message }) => message),
  );
}

function rootOf(server: string): URL {
  const wrong = usage("--server must be the address of a service, such as https://plans.example.org");
  if (!URL.canParse(server)) throw wrong;
  const url = new URL(server.endsWith("/") ? server : `${server}/`);
  const plain = url.username === "" && url.password === "" && url.search === "" && url.hash === "";
  if (!/^https?:$/.test(url.protocol) || !plain) throw wrong;
  return url;
}

async function send(
  address: URL,
  message: { readonly headers: Record<string, string>; readonly body?: string | Blob },
  patience: number,
  method: "GET" | "POST" = "POST",
): Promise<Response> {
  try {
    // A token is not carried to wherever an answer points.
    const redirect = "manual";
    return await fetch(address, { ...message, method, redirect, signal: AbortSignal.timeout(patience) });
  } catch (error) {
    if (!(error instanceof Error)) throw error;
    throw new CommandFailed(
      exitCodes.unreachable,
      "NOT_REACHED",
      `No answer from ${address.origin} (${reason(error, patience)}). Is the service running, and is --server right?`,
    );
  }
}

/** Fetch hides why behind a message of its own. */
function reason(error: Error, patience: number): string {
  if (error.name === "TimeoutError") return `nothing for ${patience / 1000} seconds`;
  const { cause } = error;
  if (cause instanceof Error) return "code" in cause ? String(cause.code) : cause.message;
  return error.message;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    if (error instanceof SyntaxError) return null;
    throw error;
  }
}

function notOurs(address: URL, { status, headers }: Response): CommandFailed {
  const to = status >= 300 && status < 400 ? ` It points to ${headers.get("location") ?? "nowhere"}.` : "";
  return new CommandFailed(
    exitCodes.unreachable,
    "NOT_A_SERVICE",
    `${address.origin} answers with ${status}, which is not an answer of a Prepwright service.${to} Is --server right?`,
  );
}
