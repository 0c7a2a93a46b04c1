import type { Role } from "@cornerway/schema";
import type { Page } from "playwright-core";
import { demoPeople } from "../../../apps/api/src/seed/demo-people.ts";

export function passwordOf(role: Role): string {
  const person = demoPeople.find((one) => one.role === role);
  if (person === undefined) throw new Error(`nobody is the ${role}`);
  return person.password;
}

/** Signs someone in by the page, as people do, and opens the only project on the desk. */
export async function signIn(page: Page, origin: string, role: Role): Promise<void> {
  const person = demoPeople.find((one) => one.role === role);
  if (person === undefined) throw new Error(`nobody is the ${role}`);
  await page.goto(origin);
  await page.getByLabel("Address").fill(person.email);
  await page.getByLabel("Password").fill(person.password);
  await page.getByRole("button", { name: "Open the desk" }).click();
  await page.getByRole("heading", { level: 1, name: person.name.split(" ")[0] ?? "" }).waitFor();
  await page.locator(".desk-table").getByRole("button").first().click();
}
