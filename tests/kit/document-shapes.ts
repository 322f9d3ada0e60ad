/** Texts of about so many bytes, each of another shape that writers, programs and attackers send: what grows is in the name. */
export const documentShapes: Readonly<Record<string, (bytes: number) => string>> = {
  "keys that no plan has": (bytes) => `kind: plan\n${lines(bytes, (at) => `k${name(at)}: 1\n`)}`,
  "keys of a map on one line": (bytes) => `{kind: plan${lines(bytes, (at) => `, k${name(at)}: 1`)}}`,
  "keys of JSON": (bytes) => `{"kind":"plan"${lines(bytes, (at) => `,"k${name(at)}":1`)}}`,
  "one key again and again": (bytes) => `kind: plan\n${lines(bytes, () => "a: 1\n")}`,
  "keys without values": (bytes) => lines(bytes, (at) => `? k${name(at)}\n`),
  "keys of maps in a list": (bytes) => `kind: plan\nmeals:\n${lines(bytes, (at) => `- a${name(at)}: 1\n  b: 2\n`)}`,
  documents: (bytes) => lines(bytes, () => "---\nkind: plan\n"),
  "documents of wrong keys": (bytes) => lines(bytes, (at) => `---\nkind: food\nslug: f${String(at)}\nx: 1\ny: 2\n`),
  "empty documents": (bytes) => lines(bytes, () => "---\n"),
  entries: (bytes) => `kind: plan\nmeals:\n${lines(bytes, () => "- a\n")}`,
  "entries on one line": (bytes) => `kind: plan\nmeals: [${lines(bytes, () => "a,")}]`,
  "maps on one line": (bytes) => `kind: plan\nmeals: [${lines(bytes, () => "{a: 1},")}]`,
  anchors: (bytes) => `kind: plan\nb:\n${lines(bytes, (at) => `- &a${name(at)} 1\n`)}`,
  aliases: (bytes) => `kind: plan\na: &a 1\nb:\n${lines(bytes, () => "- *a\n")}`,
  "aliases of many anchors": (bytes) =>
    `kind: plan\nb:\n${lines(bytes / 2, (at) => `- &a${name(at)} 1\n`)}${lines(bytes / 2, (at) => `- *a${name(at)}\n`)}`,
  tags: (bytes) => `kind: plan\nb:\n${lines(bytes, () => "- !a b c\n")}`,
  remarks: (bytes) => `kind: plan\n${lines(bytes, () => "# a\n")}`,
  "empty lines": (bytes) => `kind: plan\n${"\n".repeat(bytes)}`,
  "lines of a text": (bytes) => `kind: plan\nsummary: |\n${lines(bytes, () => "  a\n")}`,
  "words of a text": (bytes) => `kind: plan\nsummary: ${lines(bytes, () => "word ")}\n`,
  "lines that begin with a tab": (bytes) => `kind: plan\n${lines(bytes, () => "\ta: b\n")}`,
  quotes: (bytes) => lines(bytes, () => '""'),
  "exclamation marks": (bytes) => lines(bytes, () => "! "),
  directives: (bytes) => lines(bytes, () => "%YAML 1\n"),
  colons: (bytes) => lines(bytes, () => "a: "),
  dashes: (bytes) => lines(bytes, () => "- "),
  brackets: (bytes) => lines(bytes, () => "["),
  "question marks": (bytes) => `{${lines(bytes, () => "? ,")}}`,
  "lines of a component": (bytes) =>
    `kind: component\nslug: a\nlines:\n${lines(bytes, (at) => `- { food: f${name(at)}, amount: 10 grmm }\n`)}`,
  "texts of a translation": (bytes) =>
    `kind: translation\nplan: a\nlanguage: de\nsteps:\n${lines(bytes, (at) => `  s${name(at)}: Rühren.\n`)}`,
  "foods of a translation": (bytes) =>
    `kind: translation\nplan: a\nlanguage: de\nswaps:\n  a:\n${lines(bytes, (at) => `    f${name(at)}: { note: a }\n`)}`,
  "steps of a component": (bytes) =>
    `kind: component\nslug: a\nsteps:\n${lines(bytes, (at) => `- { do: Stir ${name(at)}, time: soon }\n`)}`,
};

const name = (at: number): string => String(at).padStart(6, "0");

function lines(bytes: number, lineOf: (at: number) => string): string {
  const each = lineOf(0).length;
  return Array.from({ length: Math.floor(bytes / each) }, (_, at) => lineOf(at)).join("");
}
