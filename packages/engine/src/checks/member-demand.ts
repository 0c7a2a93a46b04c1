/** Forces at one place of a member, N and N·mm. Compression is positive; second-order effects are in. */
export type MemberDemand = {
  readonly axialN: number;
  readonly shearStrongN: number;
  readonly shearWeakN: number;
  readonly momentStrongNmm: number;
  readonly momentWeakNmm: number;
  readonly torsionNmm: number;
};
