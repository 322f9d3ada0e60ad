/** A process that does nothing: its number is then known to be free. */
// @ts-nocheck

process.exitCode = 0;
