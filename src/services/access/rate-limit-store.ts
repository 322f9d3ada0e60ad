import { countedCache } from "../../domain/cache-table.js";
import { settle, spend, type Budget, type Spending, type SpendingWindow } from "./rate-limit-window.js";

/** What each caller has spent of one budget. */
export interface BudgetBook {
  readonly budget: Budget;
  /** Takes points, if they are there. A cost of 0 only looks. */
  spend(caller: string, cost: number, now: Date): Spending;
  /** Takes points that are owed, as far as they are there. */
  settle(caller: string, owed: number, now: Date): Spending;
  /** How many callers are remembered. */
  readonly size: number;
}

/** Callers that are remembered: some ten megabytes. */
const rememberedCallers = 50_000;

/**
 * Opens a book in this process's memory. It never holds more callers than told, however many come: there are two halves, and
 * when the new one is full, the old one is dropped and the new one is the old one. Who asks is moved to the new half, so nobody
 * is forgotten before half as many others have asked since. (One Map in the order of asking would be simpler, but in V8 each
 * look at its first key passes over all that were deleted before it.)
 */
export function openBudgetBook(budget: Budget, most = rememberedCallers): BudgetBook {
  let old = new Map<string, SpendingWindow>();
  let young = new Map<string, SpendingWindow>();
  const windowOf = (caller: string): SpendingWindow | undefined => young.get(caller) ?? old.get(caller);
  const remember = (caller: string, spending: Spending): Spending => {
    if (spending.window.spent > 0) young.set(caller, spending.window);
    if (young.size >= most / 2) {
      count.gaveWay += old.size;
      old = young;
      young = new Map();
    }
    count.entries = count.weight = old.size + young.size;
    return spending;
  };
  const book: BudgetBook = {
    budget,
    get size() {
      return old.size + young.size;
    },
    spend: (caller, cost, now) => remember(caller, spend(budget, windowOf(caller), cost, now.getTime())),
    settle: (caller, owed, now) => remember(caller, settle(budget, windowOf(caller), owed, now.getTime())),
  };
  const count = countedCache(`callers-${budget.name}`, book);
  return book;
}
