import { BlockList, isIP } from "node:net";

type Family = "ipv4" | "ipv6";

/**
 * Addresses that are no one's on the open internet, by the IANA special-purpose registries (RFC 6890 and its successors,
 * from memory): this machine, private and shared networks, link-local (and with it the metadata services of clouds),
 * protocol assignments, documentation, benchmarks, multicast and reserved.
 */
const notPublic: readonly [string, number, Family][] = [
  ["0.0.0.0", 8, "ipv4"],
  ["10.0.0.0", 8, "ipv4"],
  ["100.64.0.0", 10, "ipv4"],
  ["127.0.0.0", 8, "ipv4"],
  ["169.254.0.0", 16, "ipv4"],
  ["172.16.0.0", 12, "ipv4"],
  ["192.0.0.0", 24, "ipv4"],
  ["192.0.2.0", 24, "ipv4"],
  ["192.88.99.0", 24, "ipv4"],
  ["192.168.0.0", 16, "ipv4"],
  ["198.18.0.0", 15, "ipv4"],
  ["198.51.100.0", 24, "ipv4"],
  ["203.0.113.0", 24, "ipv4"],
  ["224.0.0.0", 3, "ipv4"],
  ["2001::", 23, "ipv6"],
  ["2001:db8::", 32, "ipv6"],
  ["2002::", 16, "ipv6"],
  ["3fff::", 20, "ipv6"],
];
const refused = listOf(notPublic);
/** Of IPv6, only global unicast is taken at all: RFC 4291 section 2.4. So no mapped, translated, unique-local or link-local one. */
const globalUnicast = listOf([["2000::", 3, "ipv6"]]);
const loopback = listOf([
  ["127.0.0.0", 8, "ipv4"],
  ["::1", 128, "ipv6"],
]);

/** True for an address that nothing is sent to; with `loopbackToo`, this machine itself is let through. */
export function isRefusedAddress(address: string, { loopbackToo }: { loopbackToo: boolean }): boolean {
  const family = familyOf(address);
  if (family === undefined) return true;
  if (loopbackToo && loopback.check(address, family)) return false;
  if (family === "ipv6" && !globalUnicast.check(address, family)) return true;
  return refused.check(address, family);
}

const familyOf = (address: string): Family | undefined =>
  isIP(address) === 4 ? "ipv4" : isIP(address) === 6 ? "ipv6" : undefined;

function listOf(subnets: readonly [string, number, Family][]): BlockList {
  const list = new BlockList();
  for (const [network, prefix, family] of subnets) list.addSubnet(network, prefix, family);
  return list;
}
