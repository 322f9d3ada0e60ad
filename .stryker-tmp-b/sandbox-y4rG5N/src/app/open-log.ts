// @ts-nocheck
import { pino, type Logger } from "pino";
import type { Environment } from "./environment.js";

/** JSON lines on standard error. Standard output belongs to the address, so that a script can read it. */
export const openLog = (level: Environment["logLevel"]): Logger =>
  pino(
    { level, redact: ["req.headers.authorization", "err.config", "*.password", "*.token"] },
    pino.destination({ dest: 2, sync: true }),
  );
