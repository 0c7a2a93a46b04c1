import type { Browser, Page } from "playwright-core";

export interface SignedIn {
  browser: Browser;
  origin: string;
  /** `name=value`, as the service set it. */
  cookie: string;
}

/** A page of someone who is signed in, in a browser of its own that has kept nothing yet. */
export async function signedInPage({ browser, origin, cookie }: SignedIn): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const [name = "", ...value] = cookie.split("=");
  await context.addCookies([{ name, value: value.join("="), url: origin }]);
  await context.addInitScript(() => localStorage.setItem("cornerway.signed-in", "yes")); // that a cookie is there
  return context.newPage();
}
