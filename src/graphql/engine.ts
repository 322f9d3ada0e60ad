import { AnswerTooLarge, boundedBytes } from "../http/answer-size.js";
import { boundedJson } from "../http/bounded-json.js";
import type { Caller } from "../services/actor.js";
import { DatabaseAway, noteAway } from "../services/database-away.js";
import type { Deps } from "../services/deps.js";
import { knownAnswer, rememberAnswer, type Computed } from "../services/memory/remember-answer.js";
import { recentTexts, type RecentLimits } from "../services/memory/recent-texts.js";
import { withinTime } from "../services/within-time.js";
import { createContext } from "./context.js";
import { mutationPatience, type EngineOptions } from "./engine-options.js";
import { shownFieldError } from "./errors.js";
import { preparedRequests, type PreparedRequest, type RawRequest, type ToldOperation } from "./prepared-requests.js";
import { refusal, type AskedCost, type Refusal } from "./refusal.js";

/** What came of a request: an answer with data (or with the errors of fields in its place), or none. */
export type Outcome =
  /** JSON, as it goes out, and whether it holds errors of fields. */
  | {
      readonly kind: "ANSWERED";
      readonly body: Buffer;
      readonly hasErrors: boolean;
      /** It was asked for by the hash of its document, so its address means the same for ever. */
      readonly isNamed: boolean;
    }
  | { readonly kind: "REFUSED"; readonly refusal: Refusal };

/** At whose expense. */
export interface Asked {
  /** Called with the points of an operation that may run, before any of it runs. It may throw: then it does not. */
  charge(cost: number): void;
  /** Called with the steps that computing took, whatever came of it. */
  settle(steps: number): void;
  /** Tells when whoever asks has gone. A mutation is finished all the same. */
  gone(): AbortSignal;
  /** Called with what an operation is, as soon as that is known, whether it may run or not. */
  tell(operation: ToldOperation): void;
}

/** Who asks, in which request, and what it may be answered with. */
export interface Asker extends Caller {
  readonly requestId: string;
  readonly deps: Deps;
}

export interface Engine {
  /** A promise only where something is waited for. */
  answer(request: RawRequest, asked: Asked, asker: Asker): Outcome | Promise<Outcome>;
}

/**
 * The schema behind a request: prepares it, has it charged, and runs it, unless the answer is known.
 */
export function createEngine(options: EngineOptions): Engine {
  const { costLimit, queryTime } = options;
  const { prepare } = preparedRequests(options);
  // The schema is the same for everybody, and for ever.
  const aboutSchema = recentTexts<Buffer>(keptAboutSchema);

  const compute = async (prepared: PreparedRequest, cost: AskedCost, { gone, settle }: Asked, asker: Asker) => {
    const { operation, isNamed, place } = prepared;
    const isQuery = operation.kind === "query";
    let hasErrors = false;
    const ended = withinTime(
      asker.deps,
      isQuery ? queryTime : mutationPatience * queryTime,
      isQuery ? gone() : null,
      async (hurried, over) => {
        const work = async (deps: Deps): Promise<Computed<Buffer>> => {
          try {
            const computed = await run(prepared, cost, { ...asker, deps }, over);
            hasErrors = computed.hasErrors;
            return computed;
          } finally {
            settle(deps.work?.steps ?? 0);
          }
        };
        const { memory } = asker.deps;
        return memory && place !== null && isShared(asker)
          ? rememberAnswer(memory, place, hurried, work)
          : (await work(hurried)).answer;
      },
    );
    const body = await ended.catch(tooLargeOrThrown);
    if (body === "TOO_LARGE") return refused({ ...(isQuery ? tooLarge : tooLargeAndDone), cost });
    if (body === "ENDED") return refused({ ...timedOut, cost });
    if (operation.aboutSchema !== null && !hasErrors) aboutSchema.keep(operation.aboutSchema, body, body.length);
    return answered(body, isNamed, hasErrors);
  };

  return {
    answer: (request, asked, asker) => {
      const { charge, tell } = asked;
      const prepared = prepare(request, asker.deps);
      if (!prepared.ok) return refused(prepared.refusal);
      const { operation, isNamed, told, place } = prepared;
      const cost = { asked: told.cost, limit: costLimit };
      tell(told);
      // Whatever the limit is, clients can find out what there is to ask.
      if (cost.asked > costLimit && operation.aboutSchema === null) return refused(tooDear(cost));
      charge(cost.asked);
      const ready = operation.aboutSchema === null ? undefined : aboutSchema.get(operation.aboutSchema);
      if (ready !== undefined) return answered(ready, isNamed, false);
      const { memory } = asker.deps;
      const known = memory && place !== null && isShared(asker) ? knownAnswer(memory, place, asker.deps) : undefined;
      return known === undefined ? compute(prepared, cost, asked, asker) : answered(known as Buffer, isNamed, false);
    },
  };
}

/** Answers about the schema that are kept: of the standard query some ten versions go round. */
const keptAboutSchema: RecentLimits = { count: 16, characters: 8_000_000, longest: 2_000_000 };

/** Answers to anyone are everyone's. */
const isShared = ({ actor }: Asker): boolean => actor.kind === "ANYONE";

const refused = (why: Refusal): Outcome => ({ kind: "REFUSED", refusal: why });

const answered = (body: Buffer, isNamed: boolean, hasErrors: boolean): Outcome => ({
  kind: "ANSWERED",
  body,
  isNamed,
  hasErrors,
});

/**
 * Errors carry the id of their request, so that an answer with one is nobody else's.
 *
 * @throws DatabaseAway where nothing is left of the answer without the database
 * @throws AnswerTooLarge
 */
async function run(
  { operation, variables }: PreparedRequest,
  cost: AskedCost,
  { deps, requestId, actor }: Asker,
  over: AbortSignal,
): Promise<Computed<Buffer> & { readonly hasErrors: boolean }> {
  const { data = null, errors = [] } = await operation.run(variables, createContext(deps, requestId, actor));
  // What failed because it was ended is nobody's fault, and nobody's answer.
  if (over.aborted) return { answer: Buffer.alloc(0), hasErrors: true, bytes: null };
  const away = errors.map(({ originalError }) => originalError).find((error) => error instanceof DatabaseAway);
  if (away !== undefined) {
    if (isEmpty(data) && errors.every(({ originalError }) => originalError instanceof DatabaseAway)) throw away;
    noteAway(deps.log, requestId, away);
  }
  const told = errors.map((error) => shownFieldError(error, requestId, deps.log));
  const extensions = { cost };
  const result = told.length > 0 ? { errors: told, data, extensions } : { data, extensions };
  const answer = boundedBytes(boundedJson(result));
  const hasErrors = told.length > 0;
  return { answer, hasErrors, bytes: hasErrors ? null : answer.length };
}

const isEmpty = (data: Readonly<Record<string, unknown>> | null): boolean =>
  data === null || Object.values(data).every((field) => field === null);

const timedOut = refusal("TIMED_OUT", "This took too long and was ended. Ask for less, or again later.");

/** What its message says helps; a mutation was done all the same. */
const tooLarge = refusal("ANSWER_TOO_LARGE", new AnswerTooLarge().message);
const tooLargeAndDone = refusal(
  "ANSWER_TOO_LARGE",
  "It was done, but the answer would be larger than 4 MB. Ask for less of it, or read what came of it page by page.",
);

function tooLargeOrThrown(error: unknown): "TOO_LARGE" {
  if (error instanceof AnswerTooLarge) return "TOO_LARGE";
  throw error;
}

const tooDear = (cost: AskedCost): Refusal =>
  refusal(
    "COST_TOO_HIGH",
    `This may cost ${cost.asked} points; a request may cost ${cost.limit}. Ask for less: shorter pages, or several requests.`,
    { ...cost },
    { cost },
  );
