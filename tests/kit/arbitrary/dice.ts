/** Seeded choices for made-up plans: the same seed gives the same plan (xorshift32, public domain). */
export interface Dice {
  /** 0 <= whole < sides. */
  readonly roll: (sides: number) => number;
  readonly chance: (share: number) => boolean;
  readonly pick: <T>(choices: readonly T[]) => T;
  readonly some: <T>(choices: readonly T[], share: number) => readonly T[];
}

export function diceFrom(seed: number): Dice {
  let state = (seed ^ 0x9e3779b9) >>> 0 || 1;
  const next = (): number => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state / 4294967296;
  };
  for (let warm = 0; warm < 8; warm++) next();
  const roll = (sides: number): number => Math.floor(next() * sides);
  return {
    roll,
    chance: (share) => next() < share,
    pick: (choices) => {
      const picked = choices[roll(choices.length)];
      if (picked === undefined) throw new Error("nothing to pick from");
      return picked;
    },
    some: (choices, share) => choices.filter(() => next() < share),
  };
}
