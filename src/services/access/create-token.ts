import { failed, ok, type Problem, type Result } from "../../domain/problem.js";
import type { Caller, Scope } from "./actor.js";
import type { Deps } from "../deps.js";
import { checkName } from "../drafts/check/check-name.js";
import { newTokenParts, secretHash, tokenText } from "./token-text.js";
import { authorOf, write } from "../write.js";
import { expiryOf } from "./find-token.js";

interface TokenInput {
  /** Slug; null: a token of the operator. */
  readonly publisher: string | null;
  readonly name: string;
  readonly scopes: readonly Scope[];
  /** null: with the token that makes it, and where that does not expire, never. */
  readonly expiresAt: Date | null;
  /** Its own limit, below that of the service. null or left out: that of the service. */
  readonly pointsPerMinute?: number | null | undefined;
  readonly idempotencyKey?: string | null | undefined;
}

interface CreatedToken {
  readonly id: string;
  /** Shown this once. null: the answer is given again, and the text is not known any more. */
  readonly text: string | null;
}

/** Makes a token for a publisher (its own ADMIN or the operator's may) or for the operator. */
export async function createToken(deps: Deps, caller: Caller, input: TokenInput): Promise<Result<CreatedToken>> {
  const { publisher, name, idempotencyKey, pointsPerMinute = null } = input;
  const scopes = [...new Set(input.scopes)].toSorted();
  let text: string | null = null;
  const made = await write(
    deps,
    {
      ...{ caller, publisher, idempotencyKey },
      scope: "ADMIN",
      action: "CREATE_TOKEN",
      input: {
        ...{ publisher, name, scopes, expiresAt: input.expiresAt?.toISOString() ?? null },
        // Calls that were made before there was one keep their keys.
        ...(pointsPerMinute === null ? {} : { pointsPerMinute }),
      },
    },
    async ({ data, clock }) => {
      const now = clock();
      const latest = await expiryOf({ data }, caller.actor);
      const expiresAt = input.expiresAt ?? latest;
      const problems = [
        ...checkName(name, ["input", "name"]),
        ...scopeProblems(scopes),
        ...pointsProblems(pointsPerMinute),
        ...expiryProblems(expiresAt, now, latest),
      ];
      if (problems.length > 0) return failed(problems);
      const parts = newTokenParts();
      const { id } = parts;
      await data.accessTokens.create({
        ...{ id, publisher, name, scopes, expiresAt, pointsPerMinute },
        secretHash: secretHash(parts.secret),
        createdAt: now,
        createdBy: authorOf(caller.actor),
      });
      text = tokenText(parts);
      return ok({ value: id, subject: { kind: "TOKEN", name: id, before: null, after: null } });
    },
  );
  return made.ok ? ok({ id: made.value, text }) : made;
}

const scopeProblems = (scopes: readonly Scope[]): readonly Problem[] =>
  scopes.length > 0
    ? []
    : [{ code: "BAD_SHAPE", path: ["input", "scopes"], expected: "one scope or more", got: "none" }];

/** Fewer would not pay for one plan. */
const fewestPoints = 1_000;
const mostPoints = 100_000_000;

const pointsProblems = (points: number | null): readonly Problem[] =>
  points === null || (Number.isInteger(points) && points >= fewestPoints && points <= mostPoints)
    ? []
    : [
        {
          code: "BAD_SHAPE",
          path: ["input", "pointsPerMinute"],
          expected: `a whole number from ${String(fewestPoints)} to ${String(mostPoints)}`,
          got: String(points),
        },
      ];

function expiryProblems(expiresAt: Date | null, now: Date, latest: Date | null): readonly Problem[] {
  const wrong = (expected: string): readonly Problem[] => [
    { code: "BAD_SHAPE", path: ["input", "expiresAt"], expected, got: expiresAt?.toISOString() ?? "none" },
  ];
  if (expiresAt !== null && expiresAt <= now) return wrong("a time to come");
  if (latest === null || (expiresAt !== null && expiresAt <= latest)) return [];
  return wrong(`a time up to ${latest.toISOString()}, when the token that makes it expires`);
}
