import type { Rational } from "../../rational.js";

const rows: Readonly<Record<string, string>> = {
  en: "a:1 an:1 one:1 two:2 three:3 four:4 five:5 six:6 seven:7 eight:8 nine:9 ten:10 eleven:11 twelve:12 half:1/2 quarter:1/4 third:1/3",
  de: "ein:1 eine:1 einen:1 einer:1 eines:1 zwei:2 drei:3 vier:4 fünf:5 sechs:6 sieben:7 acht:8 neun:9 zehn:10 elf:11 zwölf:12 halbe:1/2 halber:1/2 halbes:1/2 halben:1/2 viertel:1/4 drittel:1/3 anderthalb:3/2",
  fr: "un:1 une:1 deux:2 trois:3 quatre:4 cinq:5 six:6 sept:7 huit:8 neuf:9 dix:10 onze:11 douze:12 demi:1/2 demie:1/2 quart:1/4 tiers:1/3",
  es: "un:1 una:1 uno:1 dos:2 tres:3 cuatro:4 cinco:5 seis:6 siete:7 ocho:8 nueve:9 diez:10 once:11 doce:12 medio:1/2 media:1/2 cuarto:1/4 tercio:1/3",
  pl: "jeden:1 jedna:1 jedno:1 jedną:1 dwa:2 dwie:2 trzy:3 cztery:4 pięć:5 sześć:6 siedem:7 osiem:8 dziewięć:9 dziesięć:10 jedenaście:11 dwanaście:12 pół:1/2 ćwierć:1/4 półtora:3/2 półtorej:3/2",
};

const compile = (row: string): readonly (readonly [string, Rational])[] =>
  row.split(" ").map((entry) => {
    const [word = "", value = ""] = entry.split(":");
    const [n, d = "1"] = value.split("/");
    return [word, { n: Number(n), d: Number(d) }];
  });

/** Small numbers as words, by language, without the English ones for the others ("once" is eleven in Spanish). */
export const numberWords: Readonly<Record<string, ReadonlyMap<string, Rational>>> = Object.fromEntries(
  Object.entries(rows).map(([language, row]) => [language, new Map(compile(row))]),
);
