import type http from "node:http";
import { afterEach, describe, expect, it } from "vitest";
import { sendWord } from "../../src/webhooks/send-word.ts";
import { startListener, type Listener } from "../support/listener.ts";

const listeners: Listener[] = [];
afterEach(async () => {
  for (const listener of listeners.splice(0)) await listener.close();
});

async function listen(answer: http.RequestListener): Promise<Listener> {
  const listener = await startListener(answer);
  listeners.push(listener);
  return listener;
}

const word = { body: '{"a":1}', headers: { "content-type": "application/json" } };
const options = { loopbackToo: true, signal: new AbortController().signal };

describe("sendWord(url, word)", () => {
  it("posts the body with its headers, and says which status came", async () => {
    const listener = await listen((_request, response) => response.writeHead(202).end("ok"));
    const sent = await sendWord(new URL(`${listener.url}/x?y=1`), word, options);
    expect(sent).toEqual({ status: 202, error: null });
    expect(listener.heard[0]).toMatchObject({ method: "POST", url: "/x?y=1", body: '{"a":1}' });
    expect(listener.heard[0]?.headers).toMatchObject({ "content-type": "application/json", "content-length": "7" });
  });

  it("follows no redirect", async () => {
    const aim = await listen((_request, response) => response.end());
    const listener = await listen((_request, response) => response.writeHead(307, { location: aim.url }).end());
    expect(await sendWord(new URL(listener.url), word, options)).toEqual({ status: 307, error: null });
    expect(aim.heard).toEqual([]);
  });

  it("asks for the name once and connects to the address that was looked at, whatever the name leads to by then", async () => {
    const listener = await listen((_request, response) => response.end());
    let asked = 0;
    const resolve = async () => {
      asked += 1;
      return [{ address: asked === 1 ? "127.0.0.1" : "10.0.0.1", family: 4 }];
    };
    const url = new URL(listener.url.replace("127.0.0.1", "localhost"));
    expect(await sendWord(url, word, { ...options, resolve })).toEqual({ status: 200, error: null });
    expect(asked).toBe(1);
    expect(listener.heard[0]?.headers.host).toBe(url.host);
  });

  it.each([
    ["a private one", [{ address: "10.0.0.5", family: 4 }]],
    ["the metadata service of a cloud", [{ address: "169.254.169.254", family: 4 }]],
    ["this machine", [{ address: "127.0.0.1", family: 4 }]],
    ["a unique-local one", [{ address: "fd12:3456::1", family: 6 }]],
    [
      "a public one and a private one",
      [
        { address: "1.1.1.1", family: 4 },
        { address: "192.168.0.1", family: 4 },
      ],
    ],
  ])("sends nothing to a name that leads to %s", async (_what, addresses) => {
    const listener = await listen((_request, response) => response.end());
    const url = new URL(`https://hooks.example.org:${new URL(listener.url).port}/`);
    const resolve = async () => addresses;
    const sent = await sendWord(url, word, { ...options, loopbackToo: false, resolve });
    expect(sent).toEqual({ status: null, error: "the name leads to an address that is not on the open internet" });
    expect(listener.heard).toEqual([]);
  });

  it("reads no more than 64 KiB of an answer that does not end", async () => {
    let sentBytes = 0;
    const listener = await listen((_request, response) => {
      const more = () => {
        while (!response.destroyed && response.write(Buffer.alloc(16_384))) sentBytes += 16_384;
        if (!response.destroyed) response.once("drain", more);
      };
      more();
    });
    expect(await sendWord(new URL(listener.url), word, options)).toEqual({ status: 200, error: null });
    expect(sentBytes).toBeLessThan(64 * 1024 * 1024);
  });

  it("gives up on an answer that does not come, and when the process ends", async () => {
    const listener = await listen(() => undefined);
    const ending = new AbortController();
    setTimeout(() => ending.abort(), 200);
    const ended = await sendWord(new URL(listener.url), word, { ...options, signal: ending.signal });
    expect(ended).toEqual({ status: null, error: "the service is stopping" });
    const slow = await sendWord(new URL(listener.url), word, options);
    expect(slow).toEqual({ status: null, error: "no answer within 10 s" });
  }, 30_000);

  it("says in one word why a connection failed", async () => {
    const listener = await listen((_request, response) => response.end());
    await listener.close();
    expect(await sendWord(new URL(listener.url), word, options)).toEqual({ status: null, error: "ECONNREFUSED" });
    const resolve = async () => Promise.reject(Object.assign(new Error("getaddrinfo"), { code: "ENOTFOUND" }));
    const url = new URL("https://nowhere.example.org/");
    expect(await sendWord(url, word, { ...options, resolve })).toEqual({ status: null, error: "ENOTFOUND" });
  });
});
