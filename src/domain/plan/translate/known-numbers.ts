import type { TextNumber } from "./text-numbers.js";

/** The numbers of a text, to look others up among: a text may be nothing but numbers. */
export class KnownNumbers {
  /** As they are written, whatever they count. */
  private readonly written = new Set<number>();
  private readonly unitless = new Set<number>();
  /** In the smallest unit of their kind, by the kind. */
  private readonly measured = new Map<string, Set<number>>();
  /** Degrees of each scale in Celsius, from the coldest on. */
  private readonly heats: Readonly<Record<"C" | "F", readonly number[]>>;

  constructor(numbers: readonly TextNumber[]) {
    const heats: Record<"C" | "F", number[]> = { C: [], F: [] };
    for (const { values, unit } of numbers)
      for (const value of values) {
        this.written.add(rounded(value));
        if (unit === null) this.unitless.add(rounded(value));
        else if (unit.of === "TEMPERATURE") heats[unit.scale].push(unit.scale === "C" ? value : inCelsius(value));
        if (unit !== null) this.ofKind(kindOf(unit)).add(rounded(value * timesOf(unit)));
      }
    this.heats = { C: heats.C.toSorted(ascending), F: heats.F.toSorted(ascending) };
  }

  /** Whether one of them may be this number. */
  has({ values, unit }: TextNumber): boolean {
    if (unit === null) return values.some((value) => this.written.has(rounded(value)));
    if (values.some((value) => this.unitless.has(rounded(value)))) return true;
    const same = this.ofKind(kindOf(unit));
    if (values.some((value) => same.has(rounded(value * timesOf(unit))))) return true;
    return unit.of === "TEMPERATURE" && values.some((value) => this.isNear(value, unit.scale));
  }

  private ofKind(kind: string): Set<number> {
    const known = this.measured.get(kind) ?? new Set<number>();
    this.measured.set(kind, known);
    return known;
  }

  /** Whether a temperature is one of those in the other degrees. */
  private isNear(value: number, scale: "C" | "F"): boolean {
    if (scale === "C") return holds(this.heats.F, value - toleranceAt(value), value + toleranceAt(value));
    const celsius = inCelsius(value);
    const { C } = this.heats;
    return (
      holds(C, celsius - insideTolerance, celsius + insideTolerance) ||
      holds(C, Math.max(ovenFrom, celsius - ovenTolerance), celsius + ovenTolerance)
    );
  }
}

/** Common practice, no source: dials of ovens go in steps of 5 °C or 10 °F; what food must reach inside is exact. */
const ovenFrom = 120;
const ovenTolerance = 5;
const insideTolerance = 1;
const toleranceAt = (celsius: number): number => (celsius >= ovenFrom ? ovenTolerance : insideTolerance);

const inCelsius = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9;

type Unit = NonNullable<TextNumber["unit"]>;

const kindOf = (unit: Unit): string => (unit.of === "TEMPERATURE" ? unit.scale : unit.of);

const timesOf = (unit: Unit): number => ("times" in unit ? unit.times : 1);

/** Doubles that differ in the last digits only are one number. */
const rounded = (value: number): number => Number(value.toPrecision(12));

const ascending = (a: number, b: number): number => a - b;

/** Whether one of some sorted numbers lies between two, these included. */
function holds(sorted: readonly number[], low: number, high: number): boolean {
  let [from, to] = [0, sorted.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((sorted[middle] ?? high) < low) from = middle + 1;
    else to = middle;
  }
  const found = sorted[from];
  return found !== undefined && found <= high;
}
