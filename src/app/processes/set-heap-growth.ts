import { setFlagsFromString } from "node:v8";

/**
 * Lets what lives long in this process double before the whole heap is swept. Left to itself the engine leaves a tenth where little
 * is added, and what requests hold for a moment fills that: it then sweeps several times a second, beside the work, with threads
 * that a small machine does not have. The limits of the heap hold all the same.
 */
export function setHeapGrowth(): void {
  setFlagsFromString("--heap-growing-percent=100");
}
