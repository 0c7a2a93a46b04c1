import type { Role } from "@cornerway/schema";
import type { Locator, Page } from "playwright-core";
import { demoPeople } from "../../../apps/api/src/seed/demo-people.ts";

const mostTabs = 250;

/** Goes to something by Tab alone, as far round the page as it takes. */
export async function goTo(page: Page, place: Locator): Promise<void> {
  await place.waitFor();
  for (let n = 0; n < mostTabs; n += 1) {
    if (await place.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press("Tab");
  }
  throw new Error(`Tab does not lead to ${String(place)}`);
}

/** Signs someone in and opens the only project on the desk, by keys alone. */
export async function signInByKeys(page: Page, origin: string, role: Role): Promise<void> {
  const person = demoPeople.find((one) => one.role === role);
  if (person === undefined) throw new Error(`nobody is the ${role}`);
  await page.goto(origin);
  await goTo(page, page.getByLabel("Address"));
  await page.keyboard.type(person.email);
  await goTo(page, page.getByLabel("Password"));
  await page.keyboard.type(person.password);
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { level: 1, name: person.name.split(" ")[0] ?? "" }).waitFor();
  await goTo(page, page.locator(".desk-table").getByRole("button").first());
  await page.keyboard.press("Enter");
}

/** Counts from now on what is pressed on the page with a pointer of any kind. */
export async function watchPointer(page: Page): Promise<void> {
  await page.addInitScript(() => {
    Reflect.set(globalThis, "pointerPresses", 0);
    const count = () =>
      Reflect.set(globalThis, "pointerPresses", Number(Reflect.get(globalThis, "pointerPresses")) + 1);
    addEventListener("pointerdown", count, { capture: true });
  });
}

/** How often something was pressed with a pointer since the page was last fetched. */
export const pointerPresses = (page: Page): Promise<number> =>
  page.evaluate(() => Number(Reflect.get(globalThis, "pointerPresses")));
