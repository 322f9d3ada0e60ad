/** A process that does nothing: its number is then known to be free. */
process.exitCode = 0;
