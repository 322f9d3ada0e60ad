import type { Command } from "commander";
import { isScope, scopes } from "../../../services/access/actor.js";
import { readTokenText } from "../../../services/access/token-text.js";
import { asking, withLocal, type AddCommand, type Runner, type ServiceOptions } from "../command.js";
import {
  CreateTokenDocument,
  RevokeTokenDocument,
  TokensDocument,
  type TokenPartsFragment,
  type TokensQuery,
} from "../generated/operations.js";
import { exitCodes, usage, type JsonValue, type Outcome } from "../outcome.js";

interface CreateOptions extends ServiceOptions {
  readonly name: string;
  readonly scopes: string;
  readonly publisher?: string;
  readonly expires?: string;
  readonly pointsPerMinute?: string;
}

interface ListOptions extends ServiceOptions {
  readonly publisher?: string;
}

export const addToken: AddCommand = (program, run) => {
  const token = program.command("token").description("create, list and revoke access tokens");
  addCreate(token, run);
  withLocal(token.command("list"))
    .description("list access tokens, newest first, without their secrets")
    .option("--publisher <slug>", "only tokens of this publisher")
    .action((options: ListOptions) => run("token list", options, () => list(options)));
  withLocal(token.command("revoke"))
    .description("revoke an access token at once and for good")
    .argument("<id>", "the eight characters after prepwright_")
    .action((id: string, options: ServiceOptions) => run("token revoke", options, () => revoke(id, options)));
};

function addCreate(token: Command, run: Runner): void {
  withLocal(token.command("create"))
    .description("create an access token and print it once; the first one needs --local")
    .requiredOption("--name <name>", "what it is for")
    .requiredOption("--scopes <scopes>", `comma-separated list of ${scopes.join(", ")}`)
    .option("--publisher <slug>", "publisher of the token (default: an operator's token, valid for every publisher)")
    .option("--expires <time>", "when it expires, such as 2027-01-31 (default: never)")
    .option("--points-per-minute <points>", "a limit of its own, below that of the service")
    .action((options: CreateOptions) => run("token create", options, () => create(options)));
}

async function create(options: CreateOptions): Promise<Outcome> {
  const wanted = options.scopes.split(",").map((scope) => scope.trim().toUpperCase().replaceAll("-", "_"));
  const known = wanted.filter(isScope);
  if (known.length < wanted.length) throw usage(`--scopes must be some of ${scopes.join(",")}.`);
  const expires = options.expires === undefined ? null : new Date(options.expires);
  if (expires !== null && Number.isNaN(expires.getTime())) throw usage("--expires must be a time, such as 2027-01-31.");
  const points = options.pointsPerMinute;
  if (points !== undefined && !/^[0-9]{1,9}$/.test(points))
    throw usage("--points-per-minute must be a whole number, such as 60000.");
  const { name, publisher = null } = options;
  const input = {
    ...{ name, publisher, scopes: known, expiresAt: expires?.toISOString() ?? null },
    pointsPerMinute: points === undefined ? null : Number(points),
  };
  const { createToken } = await asking(options, (service) => service.ask(CreateTokenDocument, { input }));
  const { token, secret, problems } = createToken;
  if (token === null || secret === null) return { exit: exitCodes.problems, problems, result: null };
  return {
    exit: exitCodes.ok,
    result: { token: shown(token), secret },
    said: [secret],
    notes: [`Keep it: it is not shown again. Its id is ${token.id}.`],
  };
}

async function list(options: ListOptions): Promise<Outcome> {
  const found = await asking(options, async (service) => {
    const tokens: TokenPartsFragment[] = [];
    let after: string | null = null;
    do {
      const answer: TokensQuery = await service.ask(TokensDocument, { publisher: options.publisher ?? null, after });
      tokens.push(...answer.tokens.edges.map(({ node }) => node));
      after = answer.tokens.pageInfo.hasNextPage ? answer.tokens.pageInfo.endCursor : null;
    } while (after !== null);
    return tokens;
  });
  return { exit: exitCodes.ok, result: { tokens: found.map(shown) }, said: found.map(sentence) };
}

async function revoke(given: string, options: ServiceOptions): Promise<Outcome> {
  // Whoever pastes the whole token means the same, and its secret goes no further.
  const id = readTokenText(given)?.id ?? given;
  if (!/^[0-9A-Za-z]{8}$/.test(id)) throw usage("A token is named by the eight characters after prepwright_.");
  const { revokeToken } = await asking(options, (service) => service.ask(RevokeTokenDocument, { input: { id } }));
  const { token, problems } = revokeToken;
  if (token === null) return { exit: exitCodes.problems, problems, result: null };
  return { exit: exitCodes.ok, result: { token: shown(token) }, said: [`Revoked ${token.id} (${token.name}).`] };
}

const shown = ({ publisher, ...token }: TokenPartsFragment): JsonValue => ({
  ...token,
  publisher: publisher?.slug ?? null,
});

function sentence({ id, name, publisher, scopes: may, expiresAt, lastUsedAt, revokedAt }: TokenPartsFragment): string {
  const until = expiresAt === null ? "no end" : `until ${expiresAt}`;
  const state = revokedAt === null ? until : `revoked ${revokedAt}`;
  const used = lastUsedAt === null ? "never used" : `last used ${lastUsedAt}`;
  return [id, publisher?.slug ?? "operator", may.join(","), state, used, name].join("  ");
}
