import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { longestOwnedM, strapParts, webbingOf } from "./strap-parts.ts";

const TRUNK = { dbhM: 0.3, elevationM: 0 };
const GIRTH = Math.PI * 0.3;
const WEBBING = { type: "tied-webbing", minM: 0 } as const;
const SLING = { type: "whoopie-sling", minM: 0.3 } as const;

describe("tied webbing", () => {
  it("takes its turns, 25 cm of knot and 15 cm of tail besides the way from bark to hammock", () => {
    expect(webbingOf({ suspension: WEBBING }, TRUNK, 1)).toBeCloseTo(1 + GIRTH + 0.4, 12);
    expect(webbingOf({ suspension: { ...WEBBING, wraps: 3 } }, TRUNK, 1)).toBeCloseTo(
      1 + 3 * GIRTH + 0.4,
      12,
    );
    expect(strapParts({ suspension: WEBBING }, TRUNK, 1)).toMatchObject({ offBarkM: 1, slingM: 0 });
  });

  it("lets bark to hammock be just so long that all of it is used up", () => {
    const lengths = fc.double({ min: 1.5, max: 8, noNaN: true });
    const wraps = fc.double({ min: 1, max: 4, noNaN: true });
    fc.assert(
      fc.property(lengths, wraps, (ownedM, turns) => {
        const input = { suspension: { ...WEBBING, ownedM, wraps: turns, connectorM: 0.1 } };
        const longestM = longestOwnedM(input, TRUNK);
        expect(webbingOf(input, TRUNK, longestM)).toBeCloseTo(ownedM, 9);
      }),
      { seed: 1, numRuns: 100 },
    );
  });

  it("has no bound where nobody said how long it is, nor has a sling", () => {
    expect(longestOwnedM({ suspension: WEBBING }, TRUNK)).toBe(Infinity);
    expect(longestOwnedM({ suspension: { ...SLING, ownedM: 2 } }, TRUNK)).toBe(Infinity);
  });
});

describe("a sling with its tree strap", () => {
  it("needs the girth and 30 cm eye to eye, 20 cm through its own eye, however long the sling", () => {
    for (const lengthM of [0.4, 1.2]) {
      expect(webbingOf({ suspension: SLING }, TRUNK, lengthM)).toBeCloseTo(GIRTH + 0.3, 12);
      const choked = { ...SLING, throughOwnEye: true };
      expect(webbingOf({ suspension: choked }, TRUNK, lengthM)).toBeCloseTo(GIRTH + 0.2, 12);
    }
  });

  it("goes from the bark by strap, connector and sling, which add up to the whole way", () => {
    const input = { suspension: { ...SLING, connectorM: 0.1 } };
    const parts = strapParts(input, TRUNK, 1);
    expect(parts).toMatchObject({ offBarkM: 0.15, connectorM: 0.1 });
    expect(parts.slingM).toBeCloseTo(0.75, 12);
  });

  it("is set shorter where the tree strap is longer than it need be", () => {
    const owned = (ownedM: number) => strapParts({ suspension: { ...SLING, ownedM } }, TRUNK, 1).slingM;
    expect(owned(GIRTH + 0.3)).toBeCloseTo(0.85, 12);
    expect(owned(GIRTH + 0.9)).toBeCloseTo(0.55, 12);
    expect(owned(GIRTH + 5)).toBe(0);
    const choked = { ...SLING, throughOwnEye: true, ownedM: GIRTH + 0.9 };
    expect(strapParts({ suspension: choked }, TRUNK, 1).offBarkM).toBeCloseTo(0.84, 12);
  });
});
