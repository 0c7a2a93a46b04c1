import type { Assessment, Mark, Premium, Scheme } from "@cornerway/schema";
import type { GoverningVectors, LiveStrength } from "../strength/live-strength.ts";
import type { SharedWork } from "../strength/shared-work.ts";
import type { Strength } from "../strength/strength-of.ts";
import { everywhere, together } from "./governing-anywhere.ts";
import { LooksAhead, type Looked } from "./looks-ahead.ts";
import { KnownParts, type UsedPart } from "./known-parts.ts";
import { bears, moves } from "./mark-groups.ts";
import { plainStand } from "./plain-stand.ts";
import type { RemedyTools } from "./remedy-tools.ts";
import { withoutUnit } from "./without-unit.ts";

export type Accepted = Extract<Strength, { accepted: true }>;

/** The scheme as it is, what is known of it, and the mark to settle. */
export class SearchGround {
  readonly scheme: Scheme;
  readonly mark: Mark;
  readonly path: Assessment;
  readonly asIs: Accepted;
  readonly tools: RemedyTools;
  /** The unit the mark is about. */
  readonly unitId: string;
  readonly premium: Premium;
  /** Vectors that governed the scheme as it is, and each change that was run whole since. */
  private governed: GoverningVectors;
  private readonly knownAsIs: KnownParts;
  /** Parts of the unit that fail in the scheme as it is, whatever is assumed. */
  private readonly failing: ReadonlySet<string>;
  private knownOwn: KnownParts | undefined;
  private knownWithout: KnownParts | undefined;
  private readonly ahead: LooksAhead;

  constructor(scheme: Scheme, mark: Mark, path: Assessment, asIs: Accepted, tools: RemedyTools) {
    this.scheme = scheme;
    this.mark = mark;
    this.path = path;
    this.asIs = asIs;
    this.tools = tools;
    this.unitId = mark.elements.find((id) => scheme.containers.some((unit) => unit.id === id)) ?? "";
    this.premium = tools.premium(scheme, tools.book);
    this.governed = everywhere(asIs);
    this.ahead = new LooksAhead(tools);
    this.knownAsIs = new KnownParts(asIs.results);
    const reasons = asIs.units.find(({ unitId }) => unitId === this.unitId)?.reasons ?? [];
    this.failing = new Set(reasons.flatMap((reason) => (reason.kind === "over" ? [reason.partId] : [])));
  }

  /** `coming`: changes that may be looked at next, which helpers begin with. */
  *look({ scheme, trial }: Looked, coming: readonly Looked[]): SharedWork<Extract<LiveStrength, { accepted: true }>> {
    const seen = yield* this.ahead.look({ scheme, trial }, coming, this.governed);
    if (!seen.accepted) throw new Error("a change does not change the hazards");
    return seen;
  }

  *judge(scheme: Scheme): SharedWork<Accepted> {
    const after = yield* this.tools.judge(scheme);
    if (!after.accepted) throw new Error("a change does not change the hazards");
    this.governed = together(this.governed, everywhere(after));
    return after;
  }

  /**
   * Whether a part leaves the mark as it is: the mark asks for the strength of all parts of its unit but those that fail, which
   * have a mark of their own.
   */
  isLeftOpen({ id, ownerId }: UsedPart): boolean {
    return this.mark.fact.kind === "strength-open" && ownerId === this.unitId && !this.failing.has(id);
  }

  /** Whether a part is beyond its strength because of a change, by everything it is held against. */
  *isWorse(part: UsedPart): SharedWork<boolean> {
    if (part.use <= 1) return false;
    if (part.ownerId === this.unitId) {
      this.knownOwn ??= new KnownParts((yield* this.own()).results);
      if (!this.knownOwn.isWorse(part)) return false;
      if (this.isOfAnother(part)) return this.knownAsIs.isWorse(part);
    } else if (!this.knownAsIs.isWorse(part)) return false;
    if (this.inQuestion.length === 0 || this.inQuestion.includes(part.ownerId)) return true;
    this.knownWithout ??= new KnownParts((yield* this.without()).results);
    return this.knownWithout.isWorse(part);
  }

  /** A place of the unit where another comes down that the mark does not name: it has a mark of its own. */
  private isOfAnother({ id, place }: UsedPart): boolean {
    if (!place.startsWith("at ")) return false;
    const words = new Set(id.split(/[ ,:]+/));
    return this.scheme.containers.some((unit) => words.has(unit.id) && !this.mark.elements.includes(unit.id));
  }

  /** Units of which the mark asks whether they stand, or that come down where they should not. */
  private get inQuestion(): readonly string[] {
    const { fact, elements } = this.mark;
    if (moves.has(fact.kind)) return [this.unitId];
    if (fact.kind !== "load-over-opening") return [];
    return elements.filter((id) => id !== this.unitId && this.scheme.containers.some((unit) => unit.id === id));
  }

  /** The building without the units in question: what fails in it as well fails for another reason. */
  private *without(): SharedWork<Accepted> {
    const scheme = this.inQuestion.reduce<Scheme | undefined>((left, id) => left && withoutUnit(left, id), this.scheme);
    const run = scheme && (yield* this.tools.judge(scheme));
    return run?.accepted === true ? run : this.asIs;
  }

  /**
   * What the unit's own parts are held against: for openings the wall without the opening, for marks of how a unit stands the
   * unit by itself on its four corners, else the scheme as it is.
   */
  private *own(): SharedWork<Accepted> {
    const scheme = this.ownScheme();
    const run = scheme && (yield* this.tools.judge(scheme));
    return run?.accepted === true ? run : this.asIs;
  }

  private ownScheme(): Scheme | undefined {
    const { scheme, mark } = this;
    const openingId = mark.elements.find((id) => scheme.openings.some((opening) => opening.id === id));
    if (openingId !== undefined) return this.tools.draw(scheme, [{ kind: "opening.close", id: openingId }]);
    const { kind } = mark.fact;
    return moves.has(kind) || bears.has(kind) ? plainStand(scheme, this.unitId) : undefined;
  }
}
