import { mkdtempSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import type { TestProject } from "vitest/node";
import { buildPages } from "./build-pages.ts";

declare module "vitest" {
  export interface ProvidedContext {
    /** Folder of the production build of the pages, made once for a run. */
    pagesFolder: string;
  }
}

/** Builds the pages once for a run of the journeys, away from the build a person may be looking at. */
export default async function pagesForTests(project: TestProject): Promise<() => void> {
  const folder = mkdtempSync(path.join(os.tmpdir(), "cornerway-pages-"));
  const clear = () => rmSync(folder, { recursive: true, force: true });
  try {
    await buildPages(folder);
  } catch (error) {
    clear();
    throw error;
  }
  project.provide("pagesFolder", folder);
  return clear;
}
