import { describe, expect, it } from "vitest";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";
import { caseNamed, seismicOf, snowOf, sumOf, windOf } from "./building-actions.ts";
import { sampleScheme, smallBuildings, type SmallBuilding } from "./sample-scheme.ts";

/*
 * Totals of five small buildings worked by hand from the clauses, not from the engine. All: 115 mph in exposure C, ground snow 20 psf on heated
 * roofs partially exposed, S_S 1.0 and S_1 0.4 on class D, no finishes. Units 12.192 × 2.438 × 2.896 m (40 ft) or 6.058 × 2.438 × 2.591 m.
 *
 * Wind: 0.613·V²·K_d = 0.613·51.4096²·0.85 = 1377.11 Pa.
 *   q(≤ 15 ft) = 1377.11·2.01·(1/60)^(2/9.5) = 1377.11·0.848884 = 1169.00 Pa.
 *   q(5.182 m) = 1377.11·0.871564 = 1200.24 Pa;  q(5.792 m) = 1377.11·0.892225 = 1228.69 Pa.
 *   Windward 0.8·0.85 = 0.68 q(z), leeward 0.85·C_p: 0.425 q(h) for L/B ≤ 1, 0.17 for L/B ≥ 4, between 2 and 4 −0.3 + 0.05·(L/B − 2).
 * Snow: p_f = 0.7·20 = 14 psf = 670.32 Pa; uniform max(14 + 5, 20) = 20 psf = 957.61 Pa; γ = 16.6 pcf.
 * Earthquake: S_DS = 2/3·1.1·1.0 = 0.73333; sheet walls R = 2: C_s = 0.36667 (T small). Tare, upper end: 4200 kg·9.81 = 41.202 kN; 2400 kg: 23.544 kN.
 */
type Totals = {
  /** Case 1 along x and along y, kN. */
  readonly windX: number;
  readonly windY: number;
  /** Heaviest snow case that is there, kN: uniform, and with drifts where there are steps. */
  readonly uniform: number;
  readonly drifted?: number;
  /** Base shear and the forces of the storeys, kN. */
  readonly shear: number;
};

const byHand: Readonly<Record<SmallBuilding, Totals>> = {
  // y: (0.68 + 0.425)·1169.00·12.192·2.896 = 1291.75·35.308 = 45.609 kN. x: L/B 5: 0.85·1169.00·2.438·2.896 = 993.65·7.0604 = 7.0156 kN.
  // Snow 957.61·29.7241 = 28.464 kN. Earthquake 0.36667·41.202 = 15.107 kN.
  "one 40 ft high-cube": { windX: 7.0156, windY: 45.609, uniform: 28.464, shear: 15.107 },
  // y: L/B 0.4, the same face: 45.609. x: L/B 2.5 → 0.275: (0.68 + 0.23375)·1169.00·4.876·2.896 = 1068.18·14.1209 = 15.084 kN.
  // Snow 957.61·59.448 = 56.928. Earthquake 0.36667·82.404 = 30.215.
  "two side by side": { windX: 15.084, windY: 45.609, uniform: 56.928, shear: 30.215 },
  // y: 0.68·6.058·(1169.00·4.572 + 1200.24·0.610) = 4.11944·6076.8 = 25.033; leeward 0.425·1200.24·5.182·6.058 = 16.013 → 41.046 kN.
  // x: L/B 2.4848 → C_p −0.27576: 0.68·2.438·6076.8 = 10.0744; 0.234396·1200.24·5.182·2.438 = 3.5543 → 13.629 kN.
  // Snow 957.61·14.7694 = 14.143. Earthquake 0.36667·47.088 = 17.266.
  "two 20 ft stacked": { windX: 13.629, windY: 41.046, uniform: 14.143, shear: 17.266 },
  // y: exposed = box, 12.192 × 5.792: 0.68·12.192·(1169.00·4.572 + 1228.69·1.220) = 8.29056·6843.7 = 56.738; 0.425·1228.69·70.616 = 36.875 → 93.613 kN.
  // x: three ends of 7.0604 m² stand in a box of 4.876·5.792 = 28.2418 m²: × 1.33333. q(≤15 ft) on 14.1209 + 2.438·1.676 = 18.2070 m², q(h) on 2.9744 m²:
  //    0.68·(1169.00·18.2070 + 1228.69·2.9744) = 16.958; 0.23375·1228.69·21.1813 = 6.0834; (16.958 + 6.083)·1.33333 = 30.722 kN.
  // Drift: h_d = 0.43·20^(1/3)·30^(1/4) − 1.5 = 1.23165 ft (fetch 8 ft, chart starts at 20); p_d = 16.6·1.23165 = 20.4454 psf = 978.93 Pa;
  //    w = 4.9266 ft = 1.50163 m: 0.5·978.93·1.50163·12.192 = 8.9611 kN on 670.32·59.4482 = 39.849 → 48.810. Uniform 56.928.
  // Earthquake 0.36667·123.606 = 45.322.
  "a step": { windX: 30.722, windY: 93.613, uniform: 56.928, drifted: 48.81, shear: 45.322 },
  // y: both sides 70.616 m² in a box of 15.192·5.792 = 87.992 m²: 93.613·1.24607 = 116.649 kN.
  // x: L/B 6.23 → 0.17; box = exposed: 0.68·2.438·6843.7 = 11.3457; 0.17·1228.69·2.438·5.792 = 2.9496 → 14.295 kN.
  // Drift on the 3.0 m of roof left open: h_d = 0.43·40^(1/3)·30^(1/4) − 1.5 = 1.94165 ft; p_d = 32.2314 psf = 1543.25 Pa; w = 7.7666 ft = 2.36726 m < 3:
  //    0.5·1543.25·2.36726·2.438 = 4.4533 kN on 670.32·(29.7241 + 7.314) = 24.8276 → 29.281. Uniform 957.61·37.0381 = 35.468.
  // Earthquake 0.36667·82.404 = 30.215.
  "an overhang of 3 m": { windX: 14.295, windY: 116.649, uniform: 35.468, drifted: 29.281, shear: 30.215 },
};

const relative = (ours: number, hand: number) => Math.abs(ours / hand - 1);

const names: readonly SmallBuilding[] = [
  "one 40 ft high-cube",
  "two side by side",
  "two 20 ft stacked",
  "a step",
  "an overhang of 3 m",
];

describe.each(names)("the totals of %s", (name) => {
  const scheme = sampleScheme(smallBuildings[name]);
  const hand = byHand[name];
  const hazards = sampleHazards();
  const wind = windOf(scheme, hazards);

  it("are those of hand statics for wind along x and y within 0.1 %", () => {
    const x = sumOf(scheme, caseNamed(wind, "W1 +x inside pressure"));
    const y = sumOf(scheme, caseNamed(wind, "W1 +y inside suction"));
    expect(relative(x.xN / 1000, hand.windX)).toBeLessThan(1e-3);
    expect(relative(y.yN / 1000, hand.windY)).toBeLessThan(1e-3);
    expect(Math.abs(x.yN) + Math.abs(y.xN)).toBeLessThan(1e-6);
  });

  it("are those of hand statics for snow within 0.1 %", () => {
    const snow = snowOf(scheme, hazards);
    expect(relative(-sumOf(scheme, caseNamed(snow, "S uniform")).zN / 1000, hand.uniform)).toBeLessThan(1e-3);
    if (hand.drifted === undefined) expect(snow).toHaveLength(1);
    else expect(relative(-sumOf(scheme, caseNamed(snow, "S drift")).zN / 1000, hand.drifted)).toBeLessThan(1e-3);
  });

  it("are those of hand statics for earthquakes within 0.1 %", () => {
    const { cases, axes } = seismicOf(scheme, hazards);
    expect(relative((axes.x.forces?.baseShear.result.value ?? 0) / 1000, hand.shear)).toBeLessThan(1e-3);
    const along = sumOf(scheme, caseNamed(cases, "E +x anticlockwise with +0.3 y"));
    expect(relative(along.xN / 1000, hand.shear)).toBeLessThan(1e-3);
    expect(relative(along.yN / 1000, 0.3 * hand.shear)).toBeLessThan(1e-3);
  });
});
