/** Pages and JSON of about so many bytes, each of another shape: what grows is in the name. */
export const recipeShapes: Readonly<Record<string, (bytes: number) => string>> = {
  "elements that open": (bytes) => `<html>${fill(bytes, () => "<b>")}`,
  "elements that close and never opened": (bytes) =>
    `<html>${fill(bytes / 2, () => "<b>")}${fill(bytes / 2, () => "</p>")}`,
  "comments that are not closed": (bytes) => `<html>${fill(bytes, () => "<!--")}`,
  comments: (bytes) => `<html>${fill(bytes, () => "<!---->")}`,
  attributes: (bytes) => `<html ${fill(bytes, (at) => `a${name(at)}=1 `)}>`,
  "attributes of one name": (bytes) => `<script ${fill(bytes, () => "type=a ")}>`,
  entities: (bytes) => `<html>${fill(bytes, () => "&amp;&frac12;&x")}`,
  "scripts of data": (bytes) => `<html>${fill(bytes, () => block('{"@type":"Recipe"}'))}`,
  "scripts of nothing": (bytes) => `<html>${fill(bytes, () => "\n<script></script>")}`,
  lists: (bytes) => fill(bytes, () => "["),
  "lists that close": (bytes) => `${fill(bytes / 2, () => "[")}${fill(bytes / 2, () => "]")}`,
  values: (bytes) => `[${fill(bytes, () => "1,")}1]`,
  keys: (bytes) => `{${fill(bytes, (at) => `"k${name(at)}":1,`)}"a":1}`,
  "one key": (bytes) => `{${fill(bytes, () => '"a":1,')}"a":1}`,
  recipes: (bytes) => `[${fill(bytes, (at) => `{"@type":"Recipe","@id":"${name(at)}","name":"a"},`)}0]`,
  ingredients: (bytes) => recipe(`"recipeIngredient":[${fill(bytes, () => '"1 g a",')}"a"]`),
  steps: (bytes) => recipe(`"recipeInstructions":[${fill(bytes, () => '{"@type":"HowToStep","text":"Stir."},')}"a"]`),
  "markup in a text": (bytes) => recipe(`"description":"${fill(bytes, () => "<b>a</p>")}"`),
  "comments in ingredients": (bytes) => recipe(`"recipeIngredient":["${fill(bytes, () => "<!--")}"]`),
  "signs in a text": (bytes) => recipe(`"recipeIngredient":["${fill(bytes, () => "<a b='<")}"]`),
};

/** Tables of about so many bytes with the columns of a price list. */
export const tableShapes: Readonly<Record<string, (bytes: number) => string>> = {
  "rows that are good": (bytes) => table(bytes, (at) => `egg,p${name(at)},6 piece,1\n`),
  "rows that are empty": (bytes) => table(bytes, () => "\n"),
  "rows of one letter": (bytes) => table(bytes, () => "x\n"),
  "rows of too many fields": (bytes) => table(bytes, () => `${",".repeat(2_000)}\n`),
  "fields of one row": (bytes) => `${header}${fill(bytes, () => "a,")}\n`,
  columns: (bytes) => `food,pack,content,price,${fill(bytes, (at) => `c${name(at)},`)}\nx\n`,
  quotes: (bytes) => table(bytes, () => '"'),
  "quotes by two": (bytes) => `${header}"\n${fill(bytes, () => '""\n')}`,
  "quotes by three": (bytes) => table(bytes, () => '"""\n'),
  "quotes that are not closed": (bytes) => table(bytes, (at) => `"p${name(at)},egg\n`),
  "text behind quotes": (bytes) => table(bytes, () => '"a"b,"c"\n'),
  "quoted lines": (bytes) => `${header}"${fill(bytes, () => "a\n")}`,
  "contents that are wrong": (bytes) => table(bytes, (at) => `egg,p${name(at)},6 pieceses ${name(at)},1\n`),
  "codes that are wrong": (bytes) => table(bytes, (at) => `egg,p,6 piece,1,n,Q${name(at)},R${name(at)},s\n`, whole),
};

const header = "food,pack,content,price\n";
const whole = "food,pack,content,price,name,currency,region,seen\n";
const table = (bytes: number, row: (at: number) => string, head = header): string => head + fill(bytes, row);
const recipe = (more: string): string => `{"@type":"Recipe","name":"a",${more}}`;
const block = (json: string): string => `<script type="application/ld+json">${json}</script>\n`;
const name = (at: number): string => String(at).padStart(6, "0");

function fill(bytes: number, part: (at: number) => string): string {
  const each = part(0).length;
  return Array.from({ length: Math.max(1, Math.floor(bytes / each)) }, (_, at) => part(at)).join("");
}
