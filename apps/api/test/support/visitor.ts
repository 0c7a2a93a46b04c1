import { type LinkUsed, Session, type UseLink } from "@cornerway/schema";
import supertest from "supertest";
import { browserOf, type Browser, type TestService } from "./service.ts";

/** A browser in which nobody has signed in yet: it keeps the cookies it is given. */
export class Visitor {
  readonly cookies = new Map<string, string>();
  /** The `Set-Cookie` lines of the last answer. */
  lastCookies: string[] = [];
  readonly #service: TestService;

  constructor(service: TestService, browser?: Browser) {
    this.#service = service;
    if (browser !== undefined) this.#keep([browser.cookie]);
  }

  async send(method: "get" | "post", path: string, body?: object): Promise<supertest.Response> {
    const request = supertest(this.#service.app.server)[method](path);
    if (this.cookies.size > 0)
      void request.set("cookie", [...this.cookies].map(([name, value]) => `${name}=${value}`).join("; "));
    const response = await (body === undefined ? request : request.send(body));
    this.lastCookies = response.get("Set-Cookie") ?? [];
    this.#keep(this.lastCookies);
    return response;
  }

  /** Opens the page of a link: its secret follows `#`. */
  open = (path: string) => this.send("post", "/api/link", { secret: path.split("#")[1] });

  use = (body: UseLink) => this.send("post", "/api/link/use", body);

  /** Uses a link that must be good, and goes on as whoever is signed in then. */
  async enter(path: string, body: UseLink): Promise<Browser & LinkUsed> {
    const opened = await this.open(path);
    if (opened.status !== 201) throw new Error(`the link did not open: ${opened.text}`);
    const used = await this.use(body);
    if (used.status !== 201) throw new Error(`the link could not be used: ${used.text}`);
    const session = Session.parse(used.body.session);
    const cookie = `cornerway_session=${this.cookies.get("cornerway_session")}`;
    const browser = browserOf(this.#service.app, { cookie, csrfToken: session.csrfToken, person: session.person });
    return { ...browser, session, projectId: used.body.projectId };
  }

  #keep(lines: readonly string[]): void {
    for (const line of lines) {
      const [pair = ""] = line.split(";", 1);
      const at = pair.indexOf("=");
      const value = pair.slice(at + 1);
      if (value === "") this.cookies.delete(pair.slice(0, at));
      else this.cookies.set(pair.slice(0, at), value);
    }
  }
}
