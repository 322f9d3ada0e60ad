/** What a command ends with. `docs/writers.md` lists them for users. */
export const exitCodes = {
  ok: 0,
  /** What was given has problems: nothing of it was taken. */
  problems: 1,
  /** The command line or a setting is wrong, or a file cannot be read: nothing was tried. */
  usage: 2,
  /** The service or database did not answer, or failed. */
  unreachable: 3,
  /** No token, or one that may not do this. */
  notAllowed: 4,
  /** Somebody else's work would have been overwritten. */
  conflict: 5,
  /** A fault of this program. */
  fault: 70,
} as const;

export type ExitCode = (typeof exitCodes)[keyof typeof exitCodes];

/** Something wrong, and where. Where there is no file, `path` leads through what the service was asked. */
export interface ShownProblem {
  readonly code: string;
  readonly message: string;
  readonly path: readonly string[];
  readonly file: string | null;
  readonly line: number | null;
  readonly column: number | null;
}

/** Something to look at. STOPS keeps a plan from being published. */
export interface ShownFinding extends ShownProblem {
  readonly severity: "STOPS" | "LOOK";
  /** Title of the meal or component it is about; null: the plan. */
  readonly about: string | null;
  /** Code of the caution it is about. */
  readonly caution: string | null;
}

export type JsonValue =
  string | number | boolean | null | readonly JsonValue[] | { readonly [name: string]: JsonValue };

/** How a command went, for people and for programs. */
export interface Outcome {
  readonly exit: ExitCode;
  readonly problems?: readonly ShownProblem[];
  readonly findings?: readonly ShownFinding[];
  /** For `--json`; its shape is the command's own. null: nothing came of it. */
  readonly result: { readonly [name: string]: JsonValue } | null;
  /** Lines for standard output: what was asked for. */
  readonly said?: readonly string[];
  /** Lines for standard error: what to know beside it. */
  readonly notes?: readonly string[];
  /** What goes on once all that was said. */
  readonly after?: () => Promise<void>;
}

/** Ends a command where it stands. The message says what to do, and never holds a token. */
export class CommandFailed extends Error {
  override readonly name = "CommandFailed";
  readonly problems: readonly ShownProblem[];

  constructor(
    readonly exit: ExitCode,
    code: string,
    messages: string | readonly string[],
  ) {
    const each = [messages].flat();
    super(each.join(" "));
    this.problems = each.map((message) => ({ ...nowhere, code, message }));
  }
}

const nowhere = { path: [], file: null, line: null, column: null };

export const usage = (...messages: readonly string[]): CommandFailed =>
  new CommandFailed(exitCodes.usage, "USAGE", messages);

/** The answer is not what a service of this program sends. */
export const wrongAnswer = (what: string): CommandFailed =>
  new CommandFailed(exitCodes.unreachable, "NOT_A_SERVICE", `The service sent ${what}. Is --server right?`);
