import { dirname, join } from "node:path";
import ts from "typescript";

/** Who imports a file as a whole (`import * as`, `import()`, `export *`) may use any name of it. */
const everyName = "*";

const isExported = (node) => node.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword) === true;

/** @param {ts.BindingName} name */
const boundNames = (name) =>
  ts.isIdentifier(name)
    ? [name]
    : name.elements.flatMap((each) => (each.name === undefined ? [] : boundNames(each.name)));

/** Names that a statement exports, as nodes of its tree. */
function exportedBy(statement) {
  if (ts.isExportDeclaration(statement)) {
    const clause = statement.exportClause;
    if (clause === undefined) return [];
    return ts.isNamedExports(clause) ? clause.elements.map(({ name }) => name) : [clause.name];
  }
  if (!isExported(statement)) return [];
  if (ts.isVariableStatement(statement))
    return statement.declarationList.declarations.flatMap(({ name }) => boundNames(name));
  return statement.name === undefined ? [] : [statement.name];
}

/** Names that an import or export takes from the file it names. */
function takenBy(statement) {
  const clause = ts.isImportDeclaration(statement) ? statement.importClause?.namedBindings : statement.exportClause;
  if (clause === undefined) return ts.isImportDeclaration(statement) ? [] : [everyName];
  if (!ts.isNamedImports(clause) && !ts.isNamedExports(clause)) return [everyName];
  return clause.elements.map(({ propertyName, name }) => (propertyName ?? name).text);
}

/**
 * What a file exports and what it takes of others, by the compiler's parser.
 *
 * @param {string} file @param {string} text
 * @returns {{ exported: { name: string, line: number, column: number }[], taken: { file: string, name: string }[] }}
 */
function exportsAndImports(file, text) {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022);
  const exported = source.statements.flatMap(exportedBy).map((node) => {
    const { line, character } = source.getLineAndCharacterOfPosition(node.getStart(source));
    return { name: node.text, line: line + 1, column: character };
  });
  const taken = [];
  const take = (specifier, names) => {
    if (!specifier.startsWith(".")) return;
    const from = join(dirname(file), specifier.replace(/\.js$/, ".ts"));
    for (const name of names) taken.push({ file: from, name });
  };
  for (const statement of source.statements)
    if ((ts.isImportDeclaration(statement) || ts.isExportDeclaration(statement)) && statement.moduleSpecifier)
      take(statement.moduleSpecifier.text, takenBy(statement));
  // `import()` stands anywhere in a tree, which is walked only where the text has one.
  if (!/\bimport\(/.test(text)) return { exported, taken };
  const walk = (node) => {
    if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      if (ts.isStringLiteralLike(node.arguments[0])) take(node.arguments[0].text, [everyName]);
    } else if (ts.isImportTypeNode(node)) take(node.argument.literal.text, [everyName]);
    ts.forEachChild(node, walk);
  };
  walk(source);
  return { exported, taken };
}

/**
 * Exports that no other file takes.
 *
 * @param {ReadonlyMap<string, string>} texts what each file says
 * @returns {{ file: string, name: string, line: number, column: number }[]}
 */
export function unusedExports(texts) {
  const taken = new Set();
  const offered = [];
  for (const [file, text] of texts) {
    const read = exportsAndImports(file, text);
    for (const each of read.taken) taken.add(`${each.file}#${each.name}`);
    for (const each of read.exported) offered.push({ file, ...each });
  }
  return offered.filter(({ file, name }) => !taken.has(`${file}#${name}`) && !taken.has(`${file}#${everyName}`));
}
