import { isIP } from "node:net";
import { isRefusedAddress } from "./refused-address.ts";

/** What is wrong with an address to send to, as far as it can be told without asking for its name; undefined when nothing is. */
export function addressFault(url: URL, { loopbackToo }: { loopbackToo: boolean }): string | undefined {
  const host = hostOf(url);
  const onLoopback =
    loopbackToo && (host === "localhost" || (isIP(host) !== 0 && !isRefusedAddress(host, { loopbackToo })));
  if (url.protocol !== "https:" && !(url.protocol === "http:" && onLoopback)) return "only https is sent to";
  if (url.username !== "" || url.password !== "") return "leave user name and password out of the address";
  if (isIP(host) !== 0 && isRefusedAddress(host, { loopbackToo })) return "that address is not on the open internet";
  if (isIP(host) === 0 && !host.includes(".") && !onLoopback) return "that name is not on the open internet";
  return undefined;
}

/** The host of an address, an IPv6 one without its brackets. */
export const hostOf = (url: URL): string => url.hostname.replace(/^\[|\]$/g, "");
