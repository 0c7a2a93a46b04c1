import { isIPv4, isIPv6 } from "node:net";

/** In the order in which they are looked for: many browsers name others beside themselves. */
const browsers: readonly [RegExp, string][] = [
  [/\bEdg(e|A|iOS)?\//, "Edge"],
  [/\b(OPR|Opera)\//, "Opera"],
  [/\b(Firefox|FxiOS)\//, "Firefox"],
  [/\b(Chrome|Chromium|CriOS|HeadlessChrome)\//, "Chrome"],
  [/\bVersion\/.* Safari\//, "Safari"],
  [/\b(curl|wget|python-requests|node)\b/i, "a program"],
];
const systems: readonly [RegExp, string][] = [
  [/\b(iPhone|iPad|iPod)\b/, "iOS"],
  [/\bAndroid\b/, "Android"],
  [/\bWindows\b/, "Windows"],
  [/\bMac OS X\b/, "macOS"],
  [/\bCrOS\b/, "ChromeOS"],
  [/\bLinux\b/, "Linux"],
];

/** Browser and system by family from a `User-Agent` header, RFC 9110 section 10.1.5: "Firefox on Linux". */
export function whichAgent(userAgent: string | undefined): string {
  const named = (families: readonly [RegExp, string][]) => families.find(([sign]) => sign.test(userAgent ?? ""))?.[1];
  const browser = named(browsers) ?? "Another browser";
  const system = named(systems);
  return system === undefined ? browser : `${browser} on ${system}`;
}

/** The first part of an address: three of the four bytes of IPv4, three of the eight groups of IPv6. */
export function networkOf(ip: string): string {
  const plain = ip.replace(/^::ffff:(?=\d+\.)/, "");
  if (plain.startsWith("127.") || plain === "::1") return "this machine";
  if (isIPv4(plain)) return plain.replace(/\.\d+$/, ".*");
  if (!isIPv6(plain)) return "unknown";
  const [head = ""] = plain.split("::");
  const groups = head.split(":").filter((group) => group !== "");
  return `${groups.slice(0, 3).join(":")}:*`;
}
