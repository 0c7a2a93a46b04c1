import { cautions } from "@cornerway/schema";
import type { CertaintyCount, Manual, ManualFamily, Row } from "./manual.ts";

const opening =
  "What the engine computes, held against what it did not make. A row names the case, where its reference comes from and " +
  "how certain that is: published (read in print), derived (from first principles or by another program), from memory " +
  "(a standard named but not read here: confirm it against the text), common practice (no published source). Only the " +
  "first two count as verified.";

const heads = ["Case", "Source", "Certainty", "Reference", "Ours", "Difference", "Allowed"] as const;
const countHeads = ["Certainty", "Cases", "Within what is allowed", "Largest difference"] as const;

export function markdownOf(manual: Manual): string {
  return [
    `# Verification of engine ${manual.engineVersion}`,
    opening,
    ...cautions.map((caution) => `> ${caution}`),
    "## Counted",
    table(countHeads, manual.counts.map(countCells)),
    ...manual.families.flatMap(familyMarkdown),
    "",
  ].join("\n\n");
}

const familyMarkdown = ({ title, about, rows }: ManualFamily): string[] => [
  `## ${title}`,
  about,
  table(heads, rows.map(cells)),
];

const table = (head: readonly string[], rows: readonly (readonly string[])[]) =>
  [head, head.map(() => "---"), ...rows].map((row) => `| ${row.map(escapeBar).join(" | ")} |`).join("\n");

const escapeBar = (text: string) => text.replaceAll("|", "\\|");

export function htmlOf(manual: Manual): string {
  const section = ({ title, about, rows }: ManualFamily) =>
    `<section><h2>${escapeHtml(title)}</h2><p>${escapeHtml(about)}</p>${htmlTable(heads, rows.map(cells))}</section>`;
  return [
    '<!doctype html><html lang="en"><head><meta charset="utf-8">',
    `<title>Verification of engine ${manual.engineVersion}</title><style>${styles}</style></head><body>`,
    `<h1>Verification of engine ${manual.engineVersion}</h1><p>${escapeHtml(opening)}</p>`,
    `<ul>${cautions.map((caution) => `<li>${escapeHtml(caution)}</li>`).join("")}</ul>`,
    `<section><h2>Counted</h2>${htmlTable(countHeads, manual.counts.map(countCells))}</section>`,
    ...manual.families.map(section),
    "</body></html>\n",
  ].join("\n");
}

const styles =
  "body{font:15px/1.45 Georgia,serif;margin:2rem auto;max-width:75rem;color:#222}table{border-collapse:collapse;width:100%}" +
  "th,td{border-bottom:1px solid #bbb;padding:.25rem .6rem;text-align:left;vertical-align:top}td:nth-child(n+4){white-space:nowrap}";

const htmlTable = (head: readonly string[], rows: readonly (readonly string[])[]) =>
  `<table><thead>${htmlRow("th", head)}</thead><tbody>${rows.map((row) => htmlRow("td", row)).join("")}</tbody></table>`;

const htmlRow = (tag: string, row: readonly string[]) =>
  `<tr>${row.map((text) => `<${tag}>${escapeHtml(text)}</${tag}>`).join("")}</tr>`;

const escapeHtml = (text: string) =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");

const cells = (row: Row): string[] => [
  row.what,
  row.source,
  row.certainty === "memory" ? "from memory" : row.certainty,
  `${row.reference} ${row.unit}`,
  `${row.ours} ${row.unit}${row.within ? "" : `, outside: ${row.departs ?? "not explained"}`}`,
  row.relative === null ? `${row.difference} ${row.unit}` : percent(row.relative),
  allowedWords(row),
];

function allowedWords({ allowed, unit }: Row): string {
  if ("absolute" in allowed) return `${allowed.absolute} ${unit}`;
  if ("relative" in allowed) return percent(allowed.relative);
  return `−${percent(allowed.short)} to +${percent(allowed.over)}`;
}

const countCells = ({ certainty, cases, within, largestRelative }: CertaintyCount): string[] => [
  certainty === "memory"
    ? "from memory, not verified"
    : certainty === "common practice"
      ? "common practice, not verified"
      : certainty,
  String(cases),
  String(within),
  percent(largestRelative),
];

const percent = (share: number) => `${Number((share * 100).toPrecision(2))} %`;
