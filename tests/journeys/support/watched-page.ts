import type { Browser, Page } from "playwright-core";

export interface WatchedPage {
  page: Page;
  /** Everything that went wrong on the page, in the order it did. */
  faults: string[];
}

/** A page in a browser of its own; console errors, page errors and breaches of the content-security policy are kept. */
export async function watchedPage(browser: Browser, viewport = { width: 1440, height: 900 }): Promise<WatchedPage> {
  const context = await browser.newContext({ viewport });
  const page = await context.newPage();
  page.setDefaultTimeout(30_000); // a machine may be busy with other suites
  const faults: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error") faults.push(`console: ${message.text()}`);
  });
  page.on("pageerror", (error) => faults.push(`page error: ${error.message}`));
  await page.exposeFunction("breachOfPolicy", (what: string) => faults.push(`content-security policy: ${what}`));
  await page.addInitScript(tellBreaches);
  return { page, faults };
}

/** Runs in the page before anything else does. */
function tellBreaches(): void {
  addEventListener("securitypolicyviolation", ({ violatedDirective, blockedURI }) => {
    const tell: unknown = Reflect.get(globalThis, "breachOfPolicy");
    if (typeof tell === "function") tell(`${violatedDirective} ${blockedURI}`);
  });
}
