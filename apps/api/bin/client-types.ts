import openapiTS, { astToString } from "openapi-typescript";
import prettier from "prettier";
import ts from "typescript";
import { describeApi } from "../src/description/describe-api.ts";

export const clientTypesFile = "apps/web/src/data/api/schema.d.ts";

/** The types of the API description, from which the web's client is typed: the text of `clientTypesFile`. */
export async function clientTypes(): Promise<string> {
  const nodes = await openapiTS(JSON.stringify(await describeApi()), { alphabetize: true });
  const text = `// Made from the API description by \`npm run api:types\`; a test holds it against the routes.\n${astToString(nodes.map(withUndefined))}`;
  return prettier.format(text, { parser: "typescript", printWidth: 120 });
}

/** What may be left out may be undefined as well: so the shapes of the schema, which say so, fit. */
function withUndefined(root: ts.Node): ts.Node {
  const undefinedToo = ts.factory.createKeywordTypeNode(ts.SyntaxKind.UndefinedKeyword);
  const visit = (node: ts.Node): ts.Node => {
    const seen = ts.visitEachChild(node, visit, undefined);
    if (!ts.isPropertySignature(seen) || seen.questionToken === undefined || seen.type === undefined) return seen;
    if (seen.type.kind === ts.SyntaxKind.NeverKeyword) return seen;
    const type = ts.factory.createUnionTypeNode([seen.type, undefinedToo]);
    return ts.factory.updatePropertySignature(seen, seen.modifiers, seen.name, seen.questionToken, type);
  };
  return visit(root);
}
