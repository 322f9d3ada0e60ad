import { appendFileSync, readFileSync } from "node:fs";
import { isMainThread } from "node:worker_threads";

/**
 * Loaded before a program (`--import`), with TURNS as the name of a file: writes there how long each turn of the event loop kept the
 * main thread, a line each, in milliseconds of processor time as Linux counts it. What else the machine does is not in it.
 */
const file = process.env["TURNS"];
const leastWritten = 2;

if (isMainThread && file !== undefined) {
  const path = `/proc/self/task/${String(process.pid)}/schedstat`;
  const used = () => Number(readFileSync(path, "latin1").split(" ")[0]) / 1e6;
  let last = used();
  const tick = () => {
    const turn = used() - last;
    if (turn >= leastWritten) appendFileSync(file, `${turn.toFixed(1)}\n`);
    last = used();
    setTimeout(tick, 1).unref();
  };
  setTimeout(tick, 1).unref();
}
