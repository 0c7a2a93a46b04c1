// `npm run verify`: writes the verification manual, and what the app shows of it.
import { mkdirSync, writeFileSync } from "node:fs";
import { engineVersion } from "@cornerway/engine";
import { families } from "./families/families.ts";
import { manualOf } from "./manual.ts";
import { htmlOf, markdownOf } from "./print-manual.ts";

const kept = new URL("../../shared/verification/", import.meta.url);
const printed = new URL("../../test-results/verification/", import.meta.url);

const manual = manualOf(families, engineVersion);
mkdirSync(kept, { recursive: true });
mkdirSync(printed, { recursive: true });
writeFileSync(new URL("manual.json", kept), `${JSON.stringify(manual, null, 1)}\n`);
writeFileSync(new URL("manual.md", printed), markdownOf(manual));
writeFileSync(new URL("manual.html", printed), htmlOf(manual));
for (const { certainty, cases, within } of manual.counts)
  process.stdout.write(`${certainty}: ${within} of ${cases} within what is allowed\n`);
process.stdout.write("manual.md and manual.html are in test-results/verification\n");
