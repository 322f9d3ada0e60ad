import type { GraphQLFormattedError } from "graphql";
import { errorCodes, type ErrorCode, type ErrorCodeName } from "../error-codes.js";

/** Points, as `extensions.cost` of an answer says them. */
export interface AskedCost {
  readonly asked: number;
  readonly limit: number;
}

/** Why a request was not run. */
export interface Refusal {
  readonly code: ErrorCodeName;
  /** Not empty. */
  readonly errors: readonly GraphQLFormattedError[];
  readonly headers: Readonly<Record<string, string>>;
  /** What was asked costs, and may cost; left out: it is not known. */
  readonly cost?: AskedCost;
  /** The body as a whole was refused by HTTP, with this status; left out: the status is that of the code. */
  readonly status?: number;
}

export const refusal = (
  code: ErrorCodeName,
  message: string,
  facts: Readonly<Record<string, unknown>> = {},
  more: Partial<Pick<Refusal, "headers" | "status" | "cost">> = {},
): Refusal => ({ code, errors: [{ message, extensions: { code, ...facts } }], headers: {}, ...more });

/** HTTP status of a refusal. `older`: to a client that names `application/json` and nothing newer. */
export function refusalStatus({ code, status }: Refusal, older: boolean): number {
  const known: ErrorCode = errorCodes[code];
  if (status !== undefined) return status;
  return older && known.documentRefused === true ? 200 : known.status;
}

/** An operation costs more than one may. */
export const tooDear = (cost: AskedCost): Refusal =>
  refusal(
    "COST_TOO_HIGH",
    `This may cost ${cost.asked} points; the limit is ${cost.limit}. Use shorter pages or several requests.`,
    { ...cost },
    { cost },
  );
