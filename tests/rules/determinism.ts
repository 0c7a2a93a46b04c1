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

const OUTSIDE_WORLD = new Set(
  `Date Intl Temporal performance process crypto console globalThis global window self navigator fetch eval Function WeakRef
   FinalizationRegistry SharedArrayBuffer Atomics setTimeout setInterval setImmediate queueMicrotask require module`.split(
    /\s+/,
  ),
);

const LOCALE_BOUND = /^(toLocale\w*|localeCompare)$/;

/** Finds what the engine may not use: approximated functions, `**`, time, chance, locale, and imports from outside. */
export function determinismBreaches(source: string, fileName: string): DeterminismBreach[] {
  const file = ts.createSourceFile(fileName, source, ts.ScriptTarget.ES2023, true);
  const breaches: DeterminismBreach[] = [];
  const visit = (node: ts.Node): void => {
    const what = breachOf(node);
    if (what !== undefined)
      breaches.push({ line: file.getLineAndCharacterOfPosition(node.getStart(file)).line + 1, what });
    node.forEachChild(visit);
  };
  visit(file);
  return breaches;
}

function breachOf(node: ts.Node): string | undefined {
  if (ts.isBinaryExpression(node)) return powerOperator(node);
  if (ts.isIdentifier(node)) return outsideName(node);
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

function outsideName(node: ts.Identifier): string | undefined {
  if (isNameOfMember(node) || isTypeName(node)) return undefined;
  if (node.text === "Math") return mathUse(node);
  return OUTSIDE_WORLD.has(node.text) ? node.text : undefined;
}

/** `Math` must be followed by the plain name of an exact member; handed on whole it could reach any. */
function mathUse(node: ts.Identifier): string | undefined {
  const { parent } = node;
  if (!ts.isPropertyAccessExpression(parent) || parent.expression !== node) return "Math handed on whole";
  return EXACT_MATH.has(parent.name.text) ? undefined : `Math.${parent.name.text}`;
}

/** In `a.Date`, `{ Date: 1 }` and the like the word is only a label. */
function isNameOfMember(node: ts.Identifier): boolean {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent) || ts.isQualifiedName(parent)) return parent.getLastToken() === node;
  return (
    (ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent) || ts.isPropertyDeclaration(parent)) &&
    parent.name === node
  );
}

function isTypeName(node: ts.Identifier): boolean {
  return ts.isTypeReferenceNode(node.parent);
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
