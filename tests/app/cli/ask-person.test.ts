import { PassThrough } from "node:stream";
import { text } from "node:stream/consumers";
import { expect, it } from "vitest";
import { askPersonOn } from "../../../src/app/cli/ask-person.js";

/** Somebody who types this, and what is shown to them meanwhile. */
async function typing(typed: string) {
  const [input, output] = [new PassThrough(), new PassThrough()];
  const shown = text(output);
  input.end(typed);
  const asked = askPersonOn(input, output)("Which? ", ["previous", "nothing"]);
  const answer = await asked.catch((error: unknown) => error);
  output.end();
  return { answer, shown: await shown };
}

it("asks until the answer is one of those that may be", async () => {
  expect(await typing("what?\n NOTHING \nprevious\n")).toEqual({
    answer: "nothing",
    shown: "Which? Please type previous or nothing: ",
  });
});

it("changes nothing where the input ends", async () => {
  const { answer } = await typing("prev");
  expect(answer).toMatchObject({ name: "CommandFailed", exit: 2 });
});
