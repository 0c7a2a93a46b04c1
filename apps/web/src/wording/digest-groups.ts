/** The first groups of a digest, four by four: "3efd 6dca bcec 1935". */
export const digestGroups = (digest: string, groups = 4): string =>
  (digest.match(/.{1,4}/g) ?? []).slice(0, groups).join(" ");
