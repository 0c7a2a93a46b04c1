// `npm run bench -- screens`: every screen of a service that runs with the demo, as each who has one sees it, pictured at
// three sizes; those of which a drawing of intent is kept are laid beside it.
// SERVICE: where it listens (http://127.0.0.1:8080); LOOK: folder of the drawings of intent; OUT: folder of the pictures;
// ONLY: only screens whose name holds this.
import { mkdirSync } from "node:fs";
import path from "node:path";
import { openBrowser } from "../journeys/support/browser.ts";
import { signIn } from "../journeys/support/sign-in.ts";
import { layBeside } from "./screens/lay-beside.ts";
import { shownScreens, sizes, type ShownScreen } from "./screens/shown-screens.ts";

const origin = process.env["SERVICE"] ?? "http://127.0.0.1:8080";
const look = process.env["LOOK"];
const out = path.resolve(process.env["OUT"] ?? "test-results/screens");
const only = process.env["ONLY"] ?? "";
/** Long enough for the demo to be solved and drawn where its drawing says so. */
const drawnWithinMs = 60_000;

mkdirSync(out, { recursive: true });
const browser = await openBrowser();
const roles = [...new Set(shownScreens.map(({ role }) => role))];
for (const role of roles) {
  const screens = shownScreens.filter((screen) => screen.role === role && screen.name.includes(only));
  if (screens.length === 0) continue;
  const context = await browser.newContext();
  const page = await context.newPage();
  page.setDefaultTimeout(drawnWithinMs);
  if (role !== "nobody") await signIn(page, origin, role);
  if (role !== "nobody") await page.waitForURL(/projects/);
  const project = /\/projects\/[^/]+/.exec(page.url())?.[0] ?? "";
  for (const screen of screens) await show(screen, project);
  await context.close();

  async function show(screen: ShownScreen, ofProject: string): Promise<void> {
    for (const size of screen.sizes ?? sizes) {
      await page.setViewportSize(size);
      await page.goto(origin + screen.address.replace(":project", ofProject), { waitUntil: "networkidle" });
      if (screen.drawn !== undefined) await page.locator(screen.drawn).first().waitFor();
      await page.waitForTimeout(500); // fades end
      const file = path.join(out, `${screen.name}-${size.width}.png`);
      await page.screenshot({ path: file });
      const mock = screen.mocks?.[size.width];
      if (look !== undefined && mock !== undefined)
        await layBeside(
          browser,
          [path.join(look, mock), file],
          path.join(out, `beside-${screen.name}-${size.width}.png`),
        );
      console.log(file);
    }
  }
}
await browser.close();
