/** A random UUID, version 4 (RFC 9562); made from random bytes, since `randomUUID` is only there on secure origins. */
export function newUuid(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  const marked = Array.from(bytes, (byte, at) => {
    if (at === 6) return (byte & 0x0f) | 0x40;
    return at === 8 ? (byte & 0x3f) | 0x80 : byte;
  });
  const hex = marked.map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})/, "$1-$2-$3-$4-");
}
