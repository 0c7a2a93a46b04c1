import { BlockList, isIPv6 } from "node:net";

/** Says of an address whether it is one of one's own proxies, given as addresses and networks. */
export function trustedProxies(named: readonly string[]): (address: string) => boolean {
  const list = new BlockList();
  for (const one of named) {
    const [address = "", length] = one.split("/");
    if (length === undefined) list.addAddress(address, familyOf(address));
    else list.addSubnet(address, Number(length), familyOf(address));
  }
  return (address) => list.check(address, familyOf(address));
}

const familyOf = (address: string): "ipv4" | "ipv6" => (isIPv6(address) ? "ipv6" : "ipv4");
