import { failed, ok, type Path, type Problem, type Result } from "../domain/problem.js";
import { checksumOf } from "../persistence/sql/canonical-json.js";
import { UnknownPublisher, UnstorableText } from "../persistence/errors.js";
import { requireScope, type Actor, type Caller, type Scope } from "./access/actor.js";
import type { AuditAction, SubjectKind } from "./access/audit-actions.js";
import type { Author, Deps } from "./deps.js";
import { isStorable } from "./storable-text.js";

/** What an answer may hold, so that it can be stored and given again. */
type Json = string | number | boolean | null | readonly Json[] | { readonly [name: string]: Json };

/** The longest idempotency key, in characters. */
const longestKey = 255;

/** Something a caller wants changed. */
export interface WriteOrder {
  readonly caller: Caller;
  readonly scope: Scope;
  /** Slug of whose thing it is; null: what all publishers share. */
  readonly publisher: string | null;
  readonly action: AuditAction;
  /** The same key with the same input gives the first answer again, and changes nothing. */
  readonly idempotencyKey: string | null | undefined;
  /** All that was asked, as JSON; the key itself may be among it. Nothing of it is stored but a hash. */
  readonly input: unknown;
  /** Milliseconds that the transaction may take; left out: as long as others. */
  readonly longest?: number;
  /** Where the input stands among the caller's arguments; `["input"]` unless told. */
  readonly path?: Path;
}

/** What was changed, for the audit trail. */
export interface AuditSubject {
  /** What was done to it where that is not what the write is named for. */
  readonly action?: AuditAction;
  readonly kind: SubjectKind;
  /** Slug, or id of what has none. Never a secret. */
  readonly name: string;
  /** Version of a draft or number of a revision; null where there was or is none. */
  readonly before: number | null;
  readonly after: number | null;
}

export interface Written<T extends Json> {
  /** The answer. It is stored with an idempotency key, so it holds names and numbers to find things by, never a secret. */
  readonly value: T;
  /** Of several, each gets an entry of its own in the audit trail. */
  readonly subject: AuditSubject | readonly AuditSubject[];
}

/**
 * The one way to change anything. Checks the scope, opens the transaction, runs the work in it (with `data` of the
 * transaction) and writes the audit trail. If the work finds problems or throws, nothing of it is left, not
 * even the idempotency key.
 * @throws NotAllowed before anything is looked at, so that nobody can tell what others have.
 */
export async function write<T extends Json>(
  deps: Deps,
  order: WriteOrder,
  work: (deps: Deps) => Promise<Result<Written<T>>>,
): Promise<Result<T>> {
  const { caller, scope, publisher, action } = order;
  requireScope(caller.actor, scope, publisher);
  const path = order.path ?? ["input"];
  const key = order.idempotencyKey ?? null;
  const wrong = key === null ? [] : keyProblems(key, [...path, "idempotencyKey"]);
  if (wrong.length > 0) return failed(wrong);
  const author = authorOf(caller.actor);
  const at = deps.clock();

  return rollingBack(path, () =>
    deps.data.transaction(async (data) => {
      const claim = key === null ? null : { owner: JSON.stringify(author), key, fingerprint: fingerprintOf(order) };
      if (claim !== null) {
        const claimed = await data.idempotencyKeys.claim(claim.owner, claim.key);
        if (claimed.state === "RUNNING") throw new Refused([{ code: "KEY_IN_USE", path: [...path, "idempotencyKey"] }]);
        if (claimed.state === "ANSWERED") {
          if (claimed.fingerprint === claim.fingerprint) return claimed.answer as T;
          throw new Refused([{ code: "KEY_REUSED", path: [...path, "idempotencyKey"] }]);
        }
      }
      const done = await work({ ...deps, data });
      if (!done.ok) throw new Refused(done.problems);
      const { value, subject } = done.value;
      const { requestId } = caller;
      for (const { action: own, kind, name, before, after } of [subject].flat()) {
        await data.auditTrail.add({
          ...{ at, author, publisher, action: own ?? action, requestId, before, after },
          subjectKind: kind,
          subject: name,
        });
      }
      if (claim !== null) await data.idempotencyKeys.store({ ...claim, answer: value, at });
      return value;
    }, order.longest),
  );
}

/** Only there to roll the transaction back; the problems are the answer. */
class Refused extends Error {
  override readonly name = "Refused";

  constructor(readonly problems: readonly Problem[]) {
    super("the write was refused");
  }
}

/** Problems that had to be thrown, and the caller's faults that only the database sees, as data. */
async function rollingBack<T>(path: Path, run: () => Promise<T>): Promise<Result<T>> {
  try {
    return ok(await run());
  } catch (error) {
    if (error instanceof Refused) return failed(error.problems);
    if (error instanceof UnknownPublisher) {
      return failed([{ code: "UNKNOWN_PUBLISHER", path: [...path, "publisher"], publisher: error.publisher }]);
    }
    if (error instanceof UnstorableText) {
      return failed([
        { code: "BAD_SHAPE", path: [...path, ...error.path], expected: "text", got: "a NUL or half a character" },
      ]);
    }
    throw error;
  }
}

/** Who is written down. `requireScope` lets nobody through who has shown nothing. */
export function authorOf(actor: Actor): Author {
  if (actor.kind === "ANYONE") throw new Error("a write by nobody");
  return actor.kind === "TOKEN" ? { kind: "TOKEN", token: actor.token } : { kind: "PROGRAM", name: actor.name };
}

/** How imports and their files name who asked for them. */
export function authorName(actor: Actor): string {
  const author = authorOf(actor);
  return author.kind === "TOKEN" ? author.token : author.name;
}

const fingerprintOf = ({ action, publisher, input }: WriteOrder): string => checksumOf({ action, publisher, input });

function keyProblems(key: string, path: Path): readonly Problem[] {
  if (key.length > longestKey)
    return [{ code: "TOO_LARGE", path, what: "characters", size: key.length, limit: longestKey }];
  if (key === "" || !isStorable(key)) {
    return [{ code: "BAD_SHAPE", path, expected: "a key of your own making, such as a UUID", got: "something else" }];
  }
  return [];
}
