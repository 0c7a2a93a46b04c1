import { describe, expect, it } from "vitest";
import { networkOf, whichAgent } from "../../src/services/sign-in-place.ts";

describe("whichAgent", () => {
  // Headers as these browsers send them, from memory of their documentation.
  it.each([
    ["Mozilla/5.0 (X11; Linux x86_64; rv:140.0) Gecko/20100101 Firefox/140.0", "Firefox on Linux"],
    [
      "Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/126.0.0.0 Safari/537.36",
      "Chrome on Windows",
    ],
    [
      "Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/126.0 Safari/537.36 Edg/126.0",
      "Edge on Windows",
    ],
    [
      "Mozilla/5.0 (iPhone; CPU iPhone OS 18_0 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/18.0 Mobile/15E148 Safari/604.1",
      "Safari on iOS",
    ],
    ["Mozilla/5.0 (Linux; Android 14) AppleWebKit/537.36 Chrome/126.0 Mobile Safari/537.36", "Chrome on Android"],
    ["curl/8.5.0", "a program"],
    ["<script>alert(1)</script>", "Another browser"],
    [undefined, "Another browser"],
  ])("of %s is %s", (header, family) => {
    expect(whichAgent(header)).toBe(family);
  });
});

describe("networkOf", () => {
  // Addresses for documentation: RFC 5737 and RFC 3849.
  it.each([
    ["203.0.113.77", "203.0.113.*"],
    ["::ffff:203.0.113.77", "203.0.113.*"],
    ["2001:db8:12:34::77", "2001:db8:12:*"],
    ["127.0.0.1", "this machine"],
    ["::1", "this machine"],
    ["not an address", "unknown"],
  ])("of %s is %s", (ip, network) => {
    expect(networkOf(ip)).toBe(network);
  });
});
