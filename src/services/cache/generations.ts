/** Something that changes and that an answer can depend on. `plan …` is one plan by publisher and slug, `plans` whatever is published, `listings` what lists find plans by. */
export type Dependency = "foods" | "rules" | "publishers" | "plans" | "listings" | `plan ${string}`;

/** A dependency as a number; several plans may share one. */
export type Slot = number;

const named = { foods: 0, rules: 1, publishers: 2, plans: 3, listings: 4 } as const;
const firstPlan = 5;
/** Plans share this many slots, so that a million of them take no more memory than one. */
const planPlaces = 4096;

/**
 * Counts changes, and stores for each dependency the count of its last change. An answer that was begun at a count is valid as
 * long as none of its dependencies changed after that. Nothing is valid while changes are not heard.
 */
export class Generations {
  private count = 1;
  private hears = false;
  private readonly lastChange = new Float64Array(firstPlan + planPlaces);

  /** Call this before reading what an answer depends on. */
  now(): number {
    return this.count;
  }

  isListening(): boolean {
    return this.hears;
  }

  slot(dependence: Dependency): Slot {
    return dependence.startsWith("plan ") ? planPlace(dependence) : named[dependence as keyof typeof named];
  }

  /** Whether none of these slots changed after that count. */
  areUnchanged(places: readonly Slot[], since: number): boolean {
    if (!this.hears) return false;
    for (const place of places) if ((this.lastChange[place] ?? 0) > since) return false;
    return true;
  }

  /** Takes a signal of the database (persistence/database/change-signals.ts). One that this version does not know may mean anything. */
  heard(signal: string): void {
    this.count += 1;
    if (signal.startsWith("plan ")) {
      this.lastChange[planPlace(signal)] = this.count;
      this.lastChange[named.plans] = this.count;
    } else if (signal === "plans") this.lastChange.fill(this.count, named.plans);
    else if (signal in named) this.lastChange[named[signal as keyof typeof named]] = this.count;
    else this.lastChange.fill(this.count);
  }

  listening(is: boolean): void {
    this.hears = is;
    this.count += 1;
    this.lastChange.fill(this.count);
  }
}

/** FNV-1a, 32 bits (Fowler, Noll, Vo; public domain). */
function planPlace(text: string): Slot {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at += 1) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  return firstPlan + ((hash >>> 0) % planPlaces);
}
