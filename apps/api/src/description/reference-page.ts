import { cautions } from "@cornerway/schema";
import type { ApiDocument, DescribedOperation } from "./document.ts";

/** The reference as one page of plain HTML: no script, nothing from elsewhere, every shape a place to go to. */
export function referencePage({ info, tags, paths, components }: ApiDocument): string {
  const operations = Object.entries(paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({ path, method: method.toUpperCase(), operation })),
  );
  const chapters = tags.map(({ name, description }) => ({
    name,
    description,
    operations: operations.filter(({ operation }) => operation.tags.includes(name)),
  }));
  const used = chapters.filter((chapter) => chapter.operations.length > 0);
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>API reference · ${escaped(info.title)}</title><link rel="stylesheet" href="/api/reference.css"></head><body>
<header><h1>${escaped(info.title)}, API reference</h1><p>${escaped(info.description)}</p>
<p><a href="/api/openapi.json">The same as OpenAPI 3.1</a></p></header>
<nav aria-label="Chapters"><ul>${used.map(({ name }) => `<li><a href="#${slug(name)}">${escaped(name)}</a></li>`).join("")}
<li><a href="#shapes">shapes</a></li></ul></nav><main>
${used.map(chapterOf).join("\n")}
<section id="shapes"><h2>Shapes</h2><p>JSON Schema, draft 2020-12. Those named …Input are what is taken.</p>
${Object.entries(components.schemas).map(shapeOf).join("\n")}</section></main>
<footer><ul>${cautions.map((caution) => `<li>${escaped(caution)}</li>`).join("")}</ul></footer></body></html>
`;
}

interface Placed {
  path: string;
  method: string;
  operation: DescribedOperation;
}

const chapterOf = ({ name, description, operations }: { name: string; description: string; operations: Placed[] }) =>
  `<section id="${slug(name)}"><h2>${escaped(name)}</h2><p>${escaped(description)}</p>${operations.map(operationOf).join("\n")}</section>`;

const operationOf = ({ path, method, operation }: Placed) => `<article id="${operation.operationId}">
<h3>${escaped(operation.summary)}</h3><p class="way"><code>${method} ${escaped(path)}</code></p>
${operation.description === undefined ? "" : `<p>${worded(operation.description)}</p>`}
<p class="who">${escaped(whoMay(operation))}</p>${parametersOf(operation)}${bodyOf(operation)}${answersOf(operation)}</article>`;

function whoMay({ security = [] }: DescribedOperation): string {
  if (security.length === 0) return "Open to everyone.";
  return `Sent with ${security.map((group) => Object.keys(group).join(" and ")).join(", or with ")}.`;
}

const parametersOf = ({ parameters }: DescribedOperation) =>
  parameters.length === 0
    ? ""
    : `<h4>In the address and head</h4><dl>${parameters
        .map(
          ({ name, in: place, required, description, schema }) =>
            `<dt><code>${escaped(name)}</code> <small>${place}${required === true ? "" : ", optional"}</small></dt><dd>${worded(description ?? "")} ${linked(schema)}</dd>`,
        )
        .join("")}</dl>`;

const bodyOf = ({ requestBody }: DescribedOperation) =>
  requestBody === undefined ? "" : `<h4>Body</h4>${contentOf(requestBody.content)}`;

const answersOf = ({ responses }: DescribedOperation) =>
  `<h4>Answers</h4><dl>${Object.entries(responses)
    .map(
      ([status, { description, content = {} }]) =>
        `<dt><code>${status}</code></dt><dd>${worded(description)} ${Number(status) < 400 ? contentOf(content) : ""}</dd>`,
    )
    .join("")}</dl>`;

const contentOf = (content: Record<string, { schema?: unknown }>) =>
  Object.entries(content)
    .map(([type, { schema }]) => `<p><small>${escaped(type)}</small> ${linked(schema)}</p>`)
    .join("");

const shapeOf = ([name, schema]: [string, unknown]) =>
  `<details id="shape-${name}"><summary><code>${name}</code></summary>${linked(schema)}</details>`;

/** A schema, each reference in it a link to its shape; one that is nothing but a reference is the link alone. */
function linked(schema: unknown): string {
  const text = escaped(JSON.stringify(schema, undefined, 2) ?? "");
  const links = text.replaceAll(/&quot;#\/components\/schemas\/(\w+)&quot;/g, '<a href="#shape-$1">$1</a>');
  const alone = /^\{\s*&quot;\$ref&quot;: (<a [^\n]*<\/a>)\s*\}$/.exec(links)?.[1];
  return alone === undefined ? `<pre>${links}</pre>` : `<code>${alone}</code>`;
}

/** Words with what stands between grave accents as code. */
const worded = (text: string): string => escaped(text).replaceAll(/`([^`]+)`/g, "<code>$1</code>");

const slug = (name: string) => name.replaceAll(/[^a-z]+/g, "-");

const signs: Record<string, string> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" };
const escaped = (text: string) => text.replaceAll(/[&<>"']/g, (sign) => signs[sign] ?? sign);
