import { checks, type CheckFile } from "@nightspan/checks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Chain } from "./chain.ts";
import rows from "./solve-chain.checks.json" with { type: "json" };
import { chainOf, placesOf, restOf, uniformChain } from "./solve-chain.fixture.ts";
import { newChainState, solveSlack, solveTaut } from "./solve-chain.ts";

interface Given {
  readonly case: string;
  readonly links: number;
  readonly span?: number;
  readonly sag?: number;
  readonly weight?: number;
}

const CASES: CheckFile<Given> = rows;

checks(CASES, (given) => {
  if (given.case === "point") return pointLoad();
  if (given.case === "parabola") return parabola(given);
  if (given.case === "catenary") {
    const chain = uniformChain(given.links, 3, 1);
    return { sag: -Math.min(...placesOf(chain, restOf(chain, 2.49, 0)).map(([, z]) => z)) };
  }
  if (given.case === "elastic") {
    return { along: restOf(uniformChain(given.links, 3, 200, 1 / 20_000), 2.9, 0.3).alongN };
  }
  return loadedCable(given.links);
});

function pointLoad() {
  const chain = chainOf({ lengths: [3, 2.8], weights: [800] });
  const state = restOf(chain, 5, 0.4);
  const [x, z] = placesOf(chain, state)[1] ?? [NaN, NaN];
  return { x, z, along: state.alongN };
}

function parabola({ links, span = NaN, sag = NaN, weight = NaN }: Given) {
  const at = (node: number) => {
    const x = (node / links) * span;
    return [x, -4 * sag * (x / span) * (1 - x / span)] as const;
  };
  const lengths = Array.from({ length: links }, (_, link) => {
    const [[ax, az], [bx, bz]] = [at(link), at(link + 1)];
    return Math.hypot(bx - ax, bz - az);
  });
  const weights = Array.from({ length: links - 1 }, () => weight / links);
  const state = restOf(chainOf({ lengths, weights }), span, 0);
  const length = lengths.reduce((sum, one) => sum + one, 0);
  return { along: state.alongN, length, end: Math.hypot(state.alongN, state.upN) };
}

/** Feet and pounds: the joint's move when 8000 lbf hang on it. */
function loadedCable(links: number) {
  const [left, right] = [412.8837, 613.0422];
  const first = Math.round((links * left) / (left + right));
  const lengths = Array.from({ length: links }, (_, link) =>
    link < first ? left / first : right / (links - first),
  );
  const jointOf = (load: number) => {
    const weights = lengths.slice(1).map((length, node) => {
      return (3.16 * ((lengths[node] ?? NaN) + length)) / 2 + (node + 1 === first ? load : 0);
    });
    const chain = chainOf({ lengths, weights, stretchPerN: 1 / (0.85 * 19e6) });
    return placesOf(chain, restOf(chain, 1000, 0))[first] ?? [NaN, NaN];
  };
  const [bare, loaded] = [jointOf(0), jointOf(8000)];
  return { right: loaded[0] - bare[0], up: loaded[1] - bare[1] };
}

// No link long enough to lie slack across the span: that is a mechanism, not a chain at rest.
const LINK = fc.record({
  length: fc.double({ min: 0.1, max: 0.4, noNaN: true }),
  weight: fc.double({ min: 0, max: 120, noNaN: true }),
});
const CHAIN = fc.record({
  links: fc.array(LINK, { minLength: 10, maxLength: 30 }),
  tightness: fc.double({ min: 0.6, max: 0.97, noNaN: true }),
  slope: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
  stretchLog: fc.double({ min: -8, max: -4, noNaN: true }),
});

interface Drawn {
  readonly chain: Chain;
  readonly dx: number;
  readonly dz: number;
  readonly total: number;
}

function drawn(given: {
  links: { length: number; weight: number }[];
  tightness: number;
  slope: number;
  stretchLog: number;
}): Drawn {
  const { links, tightness, slope, stretchLog } = given;
  const lengths = links.map(({ length }) => length);
  const weights = links.slice(1).map(({ weight }) => weight + 0.5);
  const chain = chainOf({
    lengths,
    weights,
    stretchPerN: 10 ** stretchLog,
    ridge: [2, links.length - 2],
  });
  const total = lengths.reduce((sum, one) => sum + one, 0);
  const apart = tightness * total;
  const dx = apart / Math.hypot(1, slope);
  return { chain, dx, dz: slope * dx, total };
}

describe("a chain at rest", () => {
  it("reaches its far support, whatever the links, weights, tightness and slope", () => {
    fc.assert(
      fc.property(CHAIN, (given) => {
        const { chain, dx, dz } = drawn(given);
        const state = restOf(chain, dx, dz);
        expect(state.converged).toBe(true);
        const end = placesOf(chain, state).at(-1) ?? [NaN, NaN];
        expect(Math.hypot(end[0] - dx, end[1] - dz)).toBeLessThan(1e-9);
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  it("balances moments about the first support", () => {
    fc.assert(
      fc.property(CHAIN, (given) => {
        const { chain, dx, dz, total } = drawn(given);
        const state = restOf(chain, dx, dz);
        const places = placesOf(chain, state);
        const weight = chain.weightN.reduce((sum, one) => sum + one, 0);
        const moment = chain.weightN.reduce((sum, one, node) => sum + one * (places[node]?.[0] ?? NaN), 0);
        const farUp = weight + state.upN;
        const turning = farUp * dx - state.alongN * dz - moment;
        expect(Math.abs(turning)).toBeLessThan(1e-9 * (weight + state.alongN) * total);
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  it("mirrors: read from the other end, the same shape the other way round", () => {
    fc.assert(
      fc.property(CHAIN, (given) => {
        const { chain, dx, dz, total } = drawn(given);
        const back = chainOf({
          lengths: [...chain.lengthM].toReversed(),
          weights: [...chain.weightN].slice(1, -1).toReversed(),
          stretchPerN: chain.stretchPerN[0] ?? NaN,
        });
        const there = placesOf(chain, restOf(chain, dx, dz));
        const mirrored = placesOf(back, restOf(back, dx, -dz)).toReversed();
        there.forEach(([x, z], node) => {
          const [mx, mz] = mirrored[node] ?? [NaN, NaN];
          expect(Math.hypot(x - (dx - mx), z - (mz + dz))).toBeLessThan(1e-9 * total);
        });
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  it("with a ridgeline too short for it holds the two nodes that far apart, and pulls along it", () => {
    fc.assert(
      fc.property(CHAIN, fc.double({ min: 0.75, max: 0.98, noNaN: true }), (given, share) => {
        const { chain, dx, dz, total } = drawn(given);
        const slack = restOf(chain, dx, dz);
        const apart = (places: (readonly [number, number])[]) => {
          const [from, to] = [places[chain.ridgeFromNode], places[chain.ridgeToNode]];
          return [(to?.[0] ?? NaN) - (from?.[0] ?? NaN), (to?.[1] ?? NaN) - (from?.[1] ?? NaN)] as const;
        };
        const [freeX, freeZ] = apart(placesOf(chain, slack));
        const ridge = { lengthM: share * Math.hypot(freeX, freeZ), stretchPerN: 0 };
        // Only where the chain can still reach: its ends drawn in by the ridgeline leave links enough.
        const outside = total - chain.lengthM.slice(2, -2).reduce((sum, one) => sum + one, 0);
        fc.pre(ridge.lengthM + outside * 0.98 > Math.hypot(dx, dz));
        const guess = 0.2 * slack.alongN;
        const state = {
          ...slack,
          alongN: slack.alongN + guess / 2,
          ridgeAlongN: guess,
          ridgeUpN: (guess * freeZ) / freeX,
        };
        const ends = { firstLink: 0, endLink: chain.lengthM.length, dxM: dx, dzM: dz };
        solveTaut(chain, ends, ridge, state);
        expect(state.converged).toBe(true);
        const [x, z] = apart(placesOf(chain, state));
        expect(Math.hypot(x, z)).toBeCloseTo(ridge.lengthM, 8);
        expect(Math.abs(x * state.ridgeUpN - z * state.ridgeAlongN)).toBeLessThan(
          1e-6 * Math.hypot(x, z) * guess,
        );
        expect(state.ridgeAlongN).toBeGreaterThan(0);
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  it("does not claim a rest for a chain that cannot reach", () => {
    const chain = chainOf({ lengths: [1, 1, 1], weights: [10, 10] });
    const state = { ...newChainState(), alongN: 10, upN: -10 };
    solveSlack(chain, { firstLink: 0, endLink: 3, dxM: 3.2, dzM: 0 }, state);
    expect(state.converged).toBe(false);
  });
});
