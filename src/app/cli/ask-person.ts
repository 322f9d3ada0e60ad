import { createInterface } from "node:readline/promises";
import type { Readable, Writable } from "node:stream";
import { CommandFailed, exitCodes } from "./outcome.js";

/** Asks whoever sits at the terminal, until the answer is one of those that may be; answers with it in lower case. */
export type AskPerson = <Answer extends string>(question: string, answers: readonly Answer[]) => Promise<Answer>;

/** Asks on standard error, where it does not get into what is piped elsewhere. @throws CommandFailed where the input ends without an answer */
export const askPersonOn =
  (input: Readable, output: Writable): AskPerson =>
  async (question, answers) => {
    const lines = createInterface({ input, output, terminal: false });
    try {
      output.write(question);
      for await (const line of lines) {
        const said = line.trim().toLowerCase();
        const answer = answers.find((each) => each === said);
        if (answer !== undefined) return answer;
        output.write(`Please type ${answers.join(" or ")}: `);
      }
    } finally {
      lines.close();
    }
    output.write("\n");
    throw new CommandFailed(exitCodes.usage, "NOT_ANSWERED", "No answer was given, so nothing was changed.");
  };
