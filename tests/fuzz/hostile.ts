import type { Dice } from "../kit/arbitrary/dice.js";

const texts = [
  ...["", " ", "\0", "a\0b", "\u202e", "\ud800", "\udc00x", "\uffff", "ß", "İ", "ﬀ", "e\u0301", "🥕".repeat(30)],
  ...["'; DROP TABLE revisions; --", "' OR 1=1 --", "%' ESCAPE '", "%_%", "\\", "\\'", "$1", "$$", "{{7*7}}", "${7*7}"],
  ...["<script>alert(1)</script>", '"><img src=x onerror=alert(1)>', "javascript:alert(1)", "data:text/html,x"],
  ...["../../../../etc/passwd", "..%2f..%2f", "file:///etc/passwd", "http://169.254.169.254/", "//example.org"],
  ...["__proto__", "constructor", "prototype", "toString", "hasOwnProperty", "null", "undefined", "NaN", "-0", "1e400"],
  ...["0x10", "1/0", "0/0", "1/3", "٣", "1,5", "1.000,5", "-1", "9".repeat(400), "2026-02-30", "2026-13-01T99:99:99Z"],
  ...["Europe/Lisbon", "Mars/Base", "en-US-x-twain", "xx", "x".repeat(3000), "a,".repeat(500), "\r\nx-evil: 1", "\n"],
];

/** Text that has broken programs before: of other languages, of other layers, or with no end. */
export const hostileText = (dice: Dice): string => dice.pick(texts);

/** A JSON value of any type. */
export function hostileValue(dice: Dice, depth = 3): unknown {
  const kind = dice.roll(depth > 0 ? 10 : 7);
  if (kind < 3) return hostileText(dice);
  if (kind === 3) return dice.pick([0, -0, 1, -1, 1.5, 1e308, 2 ** 31, 2 ** 53, -(2 ** 53), 1e-320]);
  if (kind === 4) return dice.pick([true, false]);
  if (kind === 5) return null;
  if (kind === 6) return dice.pick([[], {}]);
  if (kind === 7) return Array.from({ length: dice.roll(5) }, () => hostileValue(dice, depth - 1));
  if (kind === 8) return deep(dice.roll(300));
  return Object.fromEntries(
    Array.from({ length: dice.roll(4) }, (_, at) => [
      dice.chance(0.3) ? hostileText(dice) : `k${at}`,
      hostileValue(dice, depth - 1),
    ]),
  );
}

function deep(levels: number): unknown {
  let value: unknown = 1;
  for (let level = 0; level < levels; level += 1) value = level % 2 === 0 ? [value] : { a: value };
  return value;
}
