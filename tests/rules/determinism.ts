import ts from "typescript";

/** A place in the engine where two machines, or two runs, might not give the same bits. */
export interface DeterminismBreach {
  line: number;
  what: string;
}

// Exactly rounded or exact in every implementation (ECMA-262: the other members of Math are "implementation-approximated").
const EXACT_MATH = new Set([
  ..."sqrt abs min max floor ceil round trunc sign fround imul".split(" "),
  ..."PI E LN2 LN10 LOG2E LOG10E SQRT2 SQRT1_2".split(" "),
]);

// What ECMA-262 defines for every machine alike. Anything else that no declaration in the file stands behind comes from
// the host (console, process, crypto), from the clock (Date, performance) or from the locale (Intl). A WeakMap cannot be
// walked, so when its entries are collected is never seen; a WeakRef would show it.
const SAME_EVERYWHERE = new Set(
  `Math Number String Boolean Object Array Map Set WeakMap JSON Symbol BigInt Infinity NaN undefined arguments
   ArrayBuffer DataView Float32Array Float64Array Int8Array Int16Array Int32Array Uint8Array Uint8ClampedArray Uint16Array
   Uint32Array BigInt64Array BigUint64Array Error TypeError RangeError SyntaxError`.split(/\s+/),
);

const LOCALE_BOUND = /^(toLocale\w*|localeCompare)$/;

/** Finds what the engine may not use: approximated functions, `**`, time, chance, locale, host, and imports from outside. */
export function determinismBreaches(source: string, fileName: string): DeterminismBreach[] {
  const { file, checker } = alone(source, fileName);
  const breaches: DeterminismBreach[] = [];
  const visit = (node: ts.Node): void => {
    const what = breachOf(node, checker);
    if (what !== undefined) {
      breaches.push({ line: file.getLineAndCharacterOfPosition(node.getStart(file)).line + 1, what });
    }
    node.forEachChild(visit);
  };
  visit(file);
  return breaches;
}

/** The file without the language's own declarations: only what it declares or imports itself then has a symbol. */
function alone(source: string, fileName: string): { file: ts.SourceFile; checker: ts.TypeChecker } {
  const file = ts.createSourceFile(fileName, source, ts.ScriptTarget.ES2023, true);
  const host: ts.CompilerHost = {
    ...ts.createCompilerHost({}),
    getSourceFile: (name) => (name === fileName ? file : undefined),
    fileExists: (name) => name === fileName,
  };
  const program = ts.createProgram(
    [fileName],
    { noLib: true, noResolve: true, types: [], target: ts.ScriptTarget.ES2023 },
    host,
  );
  return { file, checker: program.getTypeChecker() };
}

function breachOf(node: ts.Node, checker: ts.TypeChecker): string | undefined {
  if (ts.isBinaryExpression(node)) return powerOperator(node);
  if (ts.isIdentifier(node)) return outsideName(node, checker);
  if (ts.isPropertyAccessExpression(node)) return LOCALE_BOUND.test(node.name.text) ? node.name.text : undefined;
  if (ts.isElementAccessExpression(node)) return localeByText(node);
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return foreignImport(node);
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) return "import()";
  return ts.isImportEqualsDeclaration(node) ? "import =" : undefined;
}

function powerOperator({ operatorToken }: ts.BinaryExpression): string | undefined {
  if (operatorToken.kind === ts.SyntaxKind.AsteriskAsteriskToken) return "**";
  return operatorToken.kind === ts.SyntaxKind.AsteriskAsteriskEqualsToken ? "**=" : undefined;
}

function outsideName(node: ts.Identifier, checker: ts.TypeChecker): string | undefined {
  if (isMemberName(node) || ts.isPartOfTypeNode(node) || isDeclaredHere(node, checker)) return undefined;
  if (node.text === "Math") return mathUse(node);
  return SAME_EVERYWHERE.has(node.text) ? undefined : node.text;
}

/** In `row.Date`, `const { Date: day } = row` and `export { Date as day } from "./row.ts"` the word is only a label. */
function isMemberName(node: ts.Identifier): boolean {
  const { parent } = node;
  return (
    (ts.isPropertyAccessExpression(parent) && parent.name === node) ||
    (ts.isBindingElement(parent) && parent.propertyName === node) ||
    (ts.isExportSpecifier(parent) && parent.parent.parent.moduleSpecifier !== undefined)
  );
}

function isDeclaredHere(node: ts.Identifier, checker: ts.TypeChecker): boolean {
  return (checker.getSymbolAtLocation(node)?.declarations?.length ?? 0) > 0;
}

/** `Math` must be followed by the plain name of an exact member; handed on whole it could reach any. */
function mathUse(node: ts.Identifier): string | undefined {
  const { parent } = node;
  if (!ts.isPropertyAccessExpression(parent) || parent.expression !== node) return "Math handed on whole";
  return EXACT_MATH.has(parent.name.text) ? undefined : `Math.${parent.name.text}`;
}

function localeByText({ argumentExpression }: ts.ElementAccessExpression): string | undefined {
  if (!ts.isStringLiteralLike(argumentExpression)) return undefined;
  return LOCALE_BOUND.test(argumentExpression.text) ? argumentExpression.text : undefined;
}

function foreignImport(node: ts.ImportDeclaration | ts.ExportDeclaration): string | undefined {
  const { moduleSpecifier } = node;
  if (moduleSpecifier === undefined || !ts.isStringLiteral(moduleSpecifier)) return undefined;
  const from = moduleSpecifier.text;
  if (/^\.\.?\//.test(from)) return undefined;
  return from === "@cornerway/schema" && onlyTypes(node) ? undefined : `import from ${from}`;
}

function onlyTypes(node: ts.ImportDeclaration | ts.ExportDeclaration): boolean {
  if (ts.isExportDeclaration(node)) return node.isTypeOnly;
  return node.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword;
}
