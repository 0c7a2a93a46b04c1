import { describe, expect, it } from "vitest";
import { designBasisFor } from "../../src/codes/loads/design-basis-for.ts";
import { sampleHazards } from "./sample-hazards.ts";

const paPerPsf = 47.88025898;
const ft = 304.8;
const basis = designBasisFor("IBC 2021");
const lancaster = sampleHazards({ wind: { exposure: "B" }, snow: { psf: 30 } });

describe("flatRoof snow", () => {
  // Published check values 6.4, an open textbook's example: 0.7·1·1·1·30 = 21 psf > 20 psf
  it("is 21 psf for 30 psf on a heated, partially exposed roof in exposure B, above the least load of 20", () => {
    const { balanced, uniform } = basis.snow.flatRoof(lancaster);
    expect(balanced.result.value / paPerPsf).toBeCloseTo(21, 6);
    expect(uniform.result.value / paPerPsf).toBeCloseTo(21, 6);
  });

  // 0.7·0.9·1.2·1.1·20 = 16.632; with 5 psf of rain 21.632 < I·p_g = 1.1·20 = 22 psf
  it("is the least load where that is more: risk category III, unheated, fully exposed, 20 psf", () => {
    const hazards = sampleHazards({
      riskCategory: "III",
      snow: { psf: 20, roofExposure: "fully exposed", thermal: "unheated" },
    });
    const { balanced, uniform } = basis.snow.flatRoof(hazards);
    expect(balanced.result.value / paPerPsf).toBeCloseTo(16.632, 6);
    expect(uniform.result.value / paPerPsf).toBeCloseTo(22, 6);
  });
});

describe("rain on snow", () => {
  // 7.10: 20 psf sheltered in B: 0.7·1.2·20 = 16.8 psf; with 5 psf of rain 21.8 > 20 psf. At 21 psf no rain: 0.7·1.2·21 = 17.64, least 20.
  it("adds 5 psf up to 20 psf of ground snow and nothing beyond", () => {
    const uniform = (psf: number) =>
      basis.snow.flatRoof(sampleHazards({ wind: { exposure: "B" }, snow: { psf, roofExposure: "sheltered" } })).uniform
        .result.value / paPerPsf;
    expect(uniform(20)).toBeCloseTo(21.8, 6);
    expect(uniform(21)).toBeCloseTo(20, 6);
  });
});

describe("snow drift of ASCE 7-16", () => {
  const { balanced } = basis.snow.flatRoof(lancaster);

  // Published check values 6.4, derived: γ = 0.13·30 + 14 = 17.9 pcf; h_d = 0.43·100^(1/3)·40^(1/4) − 1.5 = 3.52 ft;
  // p_d = 17.9·3.52 = 63.0 psf; w = 4·3.52 = 14.1 ft; h_b = 21/17.9 = 1.17 ft. A step of 9.5 ft leaves h_c = 8.33 ft.
  it("off 100 ft of upper roof is 3.52 ft high, 14.1 ft wide and 63.0 psf at the step, within 0.2 %", () => {
    const drift = basis.snow.drift(lancaster, balanced, {
      upperLengthMm: 100 * ft,
      lowerLengthMm: 40 * ft,
      stepMm: 9.5 * ft,
    });
    expect(drift?.from).toBe("leeward");
    expect(Math.abs((drift?.heightMm ?? 0) / ft / 3.52 - 1)).toBeLessThan(0.002);
    expect(Math.abs((drift?.widthMm ?? 0) / ft / 14.1 - 1)).toBeLessThan(0.002);
    expect(Math.abs((drift?.peakPa ?? 0) / paPerPsf / 63 - 1)).toBeLessThan(0.002);
  });

  // h_c = 3 − 1.1732 = 1.8268 < h_d 3.5197: cut at h_c, p_d = 17.9·1.8268 = 32.70 psf, w = 4·3.5197²/1.8268 = 27.13 > 8·1.8268 = 14.61 ft
  it("is cut at the upper roof where the step is low and lengthened to eight clear heights", () => {
    const drift = basis.snow.drift(lancaster, balanced, {
      upperLengthMm: 100 * ft,
      lowerLengthMm: 40 * ft,
      stepMm: 3 * ft,
    });
    expect((drift?.peakPa ?? 0) / paPerPsf).toBeCloseTo(32.7, 1);
    expect((drift?.widthMm ?? 0) / ft).toBeCloseTo(14.61, 2);
  });

  // windward 0.75·(0.43·200^(1/3)·40^(1/4) − 1.5) = 0.75·(0.43·5.8480·2.5149 − 1.5) = 0.75·4.824 = 3.618 ft > leeward of 100 ft 3.52
  it("comes from the lower roof where that is long enough", () => {
    const drift = basis.snow.drift(lancaster, balanced, {
      upperLengthMm: 100 * ft,
      lowerLengthMm: 200 * ft,
      stepMm: 9.5 * ft,
    });
    expect(drift?.from).toBe("windward");
    expect((drift?.heightMm ?? 0) / ft).toBeCloseTo(3.618, 2);
  });

  // h_b = 1.1732 ft, 20 % of it 0.2346: a step of 1.3 ft leaves 0.127 ft
  it("is none where the step barely clears the balanced snow, and none without snow", () => {
    const step = { upperLengthMm: 100 * ft, lowerLengthMm: 40 * ft, stepMm: 1.3 * ft };
    expect(basis.snow.drift(lancaster, balanced, step)).toBeUndefined();
    const bare = sampleHazards({ snow: { psf: 0 } });
    expect(basis.snow.drift(bare, basis.snow.flatRoof(bare).balanced, { ...step, stepMm: 9.5 * ft })).toBeUndefined();
  });
});

describe("snow drift of ASCE 7-22", () => {
  // h_d = 1.5·√(48^0.74·100^0.70·0.45^1.7/γ), γ = 0.13·48 + 14 = 20.24: 48^0.74 = e^(0.74·3.8712) = 17.545,
  // 100^0.7 = 25.119, 0.45^1.7 = e^(1.7·−0.7985) = 0.25732 → √(17.545·25.119·0.25732/20.24) = √5.603 = 2.3671 → 3.551 ft
  it("off 100 ft with 48 psf and winter wind 0.45 is 3.551 ft high", () => {
    const later = designBasisFor("IBC 2024");
    const hazards = sampleHazards({ edition: "IBC 2024", snow: { psf: 48 } });
    const drift = later.snow.drift(hazards, later.snow.flatRoof(hazards).balanced, {
      upperLengthMm: 100 * ft,
      lowerLengthMm: 20 * ft,
      stepMm: 9.5 * ft,
    });
    expect((drift?.heightMm ?? 0) / ft).toBeCloseTo(3.551, 2);
  });
});
