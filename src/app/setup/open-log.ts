import { pino, type Logger } from "pino";
import type { Environment } from "./environment.js";
import { maskSecrets } from "./mask-secrets.js";

interface Destination {
  write(line: string): void;
}

/** JSON lines on standard error. Standard output belongs to the address, so that a script can read it. No line holds a secret. */
export function openLog(
  level: Environment["logLevel"],
  to: Destination = pino.destination({ dest: 2, sync: true }),
): Logger {
  return pino({ level, serializers: { err: loggedError } }, { write: (line) => to.write(maskSecrets(line)) });
}

/** What is told of an error: not the rows and values that drivers put beside the message. */
function loggedError(error: unknown): object {
  if (!(error instanceof Error)) return { message: String(error) };
  const code = "code" in error && typeof error.code === "string" ? { code: error.code } : {};
  const cause = error.cause instanceof Error ? { cause: loggedError(error.cause) } : {};
  return { type: error.name, message: firstLines(error.message), ...code, stack: stackOf(error), ...cause };
}

/** Longer messages are a driver's, with the query and its values. */
const firstLines = (message: string): string => message.slice(0, 500);

/** Where, without the message, which is told already. */
const stackOf = ({ stack = "" }: Error): string => /\n\s+at [\s\S]*/.exec(stack)?.[0].trimStart().slice(0, 2_000) ?? "";
