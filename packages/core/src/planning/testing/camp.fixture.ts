import type { Camp, Ground, Night, Sleeper, StatedPair } from "../../plan/camp.ts";
import type { HouseRules, PresetName } from "../../plan/house-rules.ts";
import type { Hammock, KitItem, Suspension } from "../../plan/kit.ts";
import { presetRules } from "../../plan/rule-defaults.ts";
import type { Obstacle } from "../../site/obstacle.ts";
import type { Looked, Tree } from "../../site/tree.ts";

/** The day of every test camp, and the one on which its trees were looked at. */
export const TONIGHT = "2027-05-14";
export const LOOKED: Looked = { by: "Ngozi", on: TONIGHT };

/** A healthy tree of 30 cm that somebody looked at today; one "not-looked-at" nobody looked at. */
export function at(xM: number, yM: number, but: Partial<Tree> = {}): Partial<Tree> {
  return { xM, yM, ...but };
}

export function sleeper(id: string, but: Partial<Sleeper> = {}): Sleeper {
  const statureM = but.statureM ?? 1.75;
  return {
    id,
    name: `Sleeper ${id}`,
    massKg: 80,
    statureM,
    hand: "right",
    reachM: 1.2 * statureM,
    stepM: 0.41 * statureM,
    sleeps: "usual",
    leads: false,
    near: [],
    apart: [],
    kit: [],
    ...but,
  };
}

/** Ordinary sound kit: rated for 136 kg, webbing of 25 mm that breaks at 6.7 kN. */
export function hammock(id: string, but: Partial<Hammock> = {}): Hammock {
  return {
    id,
    kind: "hammock",
    count: 1,
    state: "in-use",
    lengthM: 3.3,
    widthM: 1.5,
    maxUserKg: 136,
    layers: 1,
    net: false,
    massKg: 0.6,
    ...but,
  };
}

export function webbing(id: string, but: Partial<Suspension> = {}): Suspension {
  return {
    id,
    kind: "suspension",
    type: "tied-webbing",
    count: 1,
    state: "in-use",
    minM: 0,
    strapLengthM: 5,
    strapWidthM: 0.025,
    breakingN: 6700,
    ...but,
  };
}

export function pair(
  id: string,
  trees: readonly [string, string],
  but: Partial<StatedPair> = {},
): StatedPair {
  return {
    id,
    trees,
    spanM: 4.2,
    stepped: false,
    dbhM: [0.3, 0.3],
    dbhAssumed: false,
    lookedAt: LOOKED,
    tooNear: [],
    ...but,
  };
}

/** A camp said as a sentence: `camp().trees(at(0, 0), at(4.2, 0)).sleepers(1).build()`. */
export function camp(): CampSentence {
  return new CampSentence();
}

class CampSentence {
  private readonly parts: { -readonly [K in keyof Ground]: Ground[K] } = {
    trees: [],
    pairs: [],
    obstacles: [],
    source: "taped",
    positionErrorM: 0.1,
  };
  private people: readonly Sleeper[] = [];
  private store: readonly KitItem[] | undefined;
  private house: HouseRules = presetRules("usual");
  private tonight: Night | undefined;
  private hasGround = true;

  trees(...trees: readonly Partial<Tree>[]): this {
    const named = trees.map((tree, index) => fullTree(tree, this.parts.trees.length + index + 1));
    this.parts.trees = [...this.parts.trees, ...named];
    return this;
  }

  pairs(...pairs: readonly StatedPair[]): this {
    this.parts.pairs = pairs;
    return this;
  }

  obstacles(...obstacles: readonly Obstacle[]): this {
    this.parts.obstacles = obstacles;
    return this;
  }

  ground(but: Partial<Ground>): this {
    Object.assign(this.parts, but);
    return this;
  }

  noGround(): this {
    this.hasGround = false;
    return this;
  }

  /** So many alike, or the sleepers themselves. */
  sleepers(...people: readonly (Sleeper | number)[]): this {
    this.people = people.flatMap((one) =>
      typeof one === "number" ? Array.from({ length: one }, (_, index) => sleeper(`s${index + 1}`)) : [one],
    );
    return this;
  }

  /** The store; ordinary sound kit for everybody where a test says nothing. */
  kit(...items: readonly KitItem[]): this {
    this.store = items;
    return this;
  }

  rules(preset: PresetName, but: Partial<HouseRules> = {}): this {
    this.house = { ...presetRules(preset), ...but };
    return this;
  }

  night(night: Partial<Night> = {}): this {
    this.tonight = {
      lowK: 278.15,
      windMS: 2,
      gustMS: 5,
      windHeightM: 10,
      rainMmH: 0,
      humidityRatio: 0.8,
      cloudRatio: 0.5,
      ...night,
    };
    return this;
  }

  build(): Camp {
    const count = Math.max(1, this.people.length);
    return {
      name: "Test wood",
      date: TONIGHT,
      ...(this.hasGround ? { ground: this.parts } : {}),
      rules: this.house,
      sleepers: this.people,
      groups: [],
      kit: this.store ?? [hammock("hammock", { count }), webbing("webbing", { count })],
      ...(this.tonight === undefined ? {} : { night: this.tonight }),
      defaultsUsed: [],
    };
  }
}

function fullTree(tree: Partial<Tree>, number: number): Tree {
  const id = tree.id ?? `T${String(number).padStart(2, "0")}`;
  return {
    xM: 0,
    yM: 0,
    dbhM: 0.3,
    condition: "healthy",
    ...(tree.condition === "not-looked-at" ? {} : { lookedAt: LOOKED }),
    tag: id,
    use: true,
    ...tree,
    id,
  };
}
