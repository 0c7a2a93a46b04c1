import { openSection } from "../../catalog/sections/open-section.ts";
import {
  thinWalledSection,
  type ThinWalledSection,
  type WallStrip,
} from "../../catalog/sections/thin-walled-section.ts";
import { flatFlangeMm, flatWebMm, type Channel, type Flange } from "./channel-member.ts";
import { effectiveShare, effectiveWeb, evenPlateFactors, type EffectiveWeb } from "./effective-width.ts";

/** What of a channel works in bending about the axis across its web, with one flange pressed at a given stress. */
export type EffectiveChannel = {
  readonly flangeShare: number;
  readonly web: EffectiveWeb;
  readonly section: ThinWalledSection;
  /** From the neutral axis to the outer face of the pressed flange, mm. */
  readonly toPressedMm: number;
};

/**
 * Effective section of a channel bent in the plane of its web, by repeated trial of the neutral axis until it stands still
 * to 1e-9 of the depth (AISI S100 Appendix 1, 1.2.1 for the flange, 1.1.2 for the web). Throws if it never does.
 */
export function effectiveChannel(channel: Channel, pressed: Flange, stressMpa: number): EffectiveChannel {
  const depth = channel.webMm + channel.section.thicknessMm;
  const { reach } = openSection(channel.section.outline, channel.section.thicknessMm);
  let toPressedMm = pressed === "head" ? reach.upMm : reach.downMm;
  for (let trial = 0; trial < 200; trial += 1) {
    const next = tryAxis(channel, pressed, stressMpa, toPressedMm);
    if (Math.abs(next.toPressedMm - toPressedMm) < 1e-9 * depth) return next;
    toPressedMm = next.toPressedMm;
  }
  throw new RangeError(`effectiveChannel: no neutral axis found for ${channel.section.name}`);
}

function tryAxis(channel: Channel, pressed: Flange, stressMpa: number, toPressedMm: number): EffectiveChannel {
  const t = channel.section.thicknessMm;
  const flat = flatWebMm(channel);
  const perMm = stressMpa / toPressedMm;
  const web = effectiveWeb(flat, t, {
    pressedMpa: perMm * (toPressedMm - t),
    farMpa: perMm * (toPressedMm - t - flat),
  });
  const flangeShare = effectiveShare(evenPlateFactors.oneEdge, flatFlangeMm(channel, pressed), t, stressMpa);
  const section = thinWalledSection(wallsLeft(channel, pressed, flangeShare, web, toPressedMm - t));
  return {
    flangeShare,
    web,
    section,
    // The pressed flange lies at the top of the strips.
    toPressedMm: section.reach.upMm,
  };
}

/** Strips that work, drawn with the pressed flange on top: y is the distance below its centreline, counted upward. */
function wallsLeft(
  channel: Channel,
  pressed: Flange,
  flangeShare: number,
  web: EffectiveWeb,
  pressedFlatMm: number,
): WallStrip[] {
  const t = channel.section.thicknessMm;
  const other = pressed === "head" ? "foot" : "head";
  const flat = flatFlangeMm(channel, pressed);
  const flange = strip(t, 0, 0, channel.flangeMm[pressed] - flat * (1 - flangeShare), 0);
  const far = strip(t, 0, -channel.webMm, channel.flangeMm[other], -channel.webMm);
  const lost = Math.max(0, Math.min(pressedFlatMm, flatWebMm(channel)) - web.atEdgeMm - web.atAxisMm);
  if (lost === 0) return [flange, far, strip(t, 0, 0, 0, -channel.webMm)];
  const gap = -(t / 2 + web.atEdgeMm);
  return [flange, far, strip(t, 0, 0, 0, gap), strip(t, 0, gap - lost, 0, -channel.webMm)];
}

const strip = (thicknessMm: number, x1: number, y1: number, x2: number, y2: number): WallStrip => ({
  from: { xMm: x1, yMm: y1 },
  to: { xMm: x2, yMm: y2 },
  thicknessMm,
});
