import {
  compare,
  degrees,
  type BerthTarp,
  type BerthWarmth,
  type CutList,
  type Dealing,
  type NightClock,
  type PackingList,
  type SpareBerth,
  type StoreFit,
} from "@nightspan/core";

/** One of each part of a plan with every field there is, in SI units; figures are chosen to be told apart, not to be true. */

const FINDING = compare({
  rule: "night.gust",
  source: "house-convention",
  subject: "camp",
  sense: "at-most",
  demand: 12,
  limit: 14,
  unit: "m/s",
});

const RATES = { hammockM3S: 1 / 3.6e9, sleeperM3S: 2 / 3.6e9, underM3S: 3 / 3.6e9 };

const PITCH = {
  headTieM: 1.9,
  footTieM: 2,
  shiftM: 0.1,
  leftAngle: degrees(50),
  rightAngle: degrees(20),
  porch: "right",
  closedEnds: ["head"],
  pegged: ["left"],
} as const;

export const TARP: BerthTarp = {
  item: "t",
  shape: "rectangle",
  pitch: PITCH,
  panels: [
    {
      name: "left",
      corners: [
        [0, 1, 2],
        [1, 1, 2],
        [0, 0, 1],
      ],
    },
  ],
  guys: [
    {
      name: "left/head",
      from: [0, 1, 2],
      peg: [0, 3, 0],
      lengthM: 1.5,
      angle: degrees(40),
      asideM: 2,
      alongM: 0.5,
      pullN: 60,
      conflicts: [{ with: "stem", id: "K1", gapM: 0.2 }],
    },
  ],
  ridge: {
    spanM: 4,
    headTieM: 1.9,
    footTieM: 2,
    sagM: 0.05,
    gustSagM: 0.1,
    pullN: 80,
    gustPullN: 200,
    onTrees: {
      head: { sidewaysN: 90, heightM: 1.9, towardsRad: Math.PI / 2 },
      foot: { sidewaysN: 90, heightM: 2 },
    },
  },
  overhangM: { head: 0.3, foot: 0.2 },
  diagonalM: { head: 0.4, foot: 0.1 },
  headroomM: 0.5,
  ventM2: 1.5,
  drip: {
    head: { fromGatherM: 0.2, insideM: 0.1, strapClearM: 0.05, strap: "clear" },
    foot: { fromGatherM: 0.2, insideM: -0.1, strapClearM: -0.05, strap: "rubs" },
  },
  wetVerdicts: [{ part: "foot", covered: false, shareRatio: 0.25, lowerByM: 0.2 }],
  wet: RATES,
  canopyDrip: RATES,
  wetMap: { fromXM: 0, fromYM: -1, zM: 0.5, cellM: 0.1, columns: 2, rows: 1, shares: [0, 0.5] },
  rose: [{ windFromRad: Math.PI, wet: RATES }],
  options: [
    { item: "t", pitch: PITCH, wetM3S: 4 / 3.6e9, headroomM: 0.5, ventM2: 1.5, sideLoadN: 60, chosen: true },
  ],
  windMS: 2,
  gustMS: 4,
  findings: [FINDING],
};

export const NIGHT_CLOCK: NightClock = {
  sun: {
    kind: "no-dusk",
    sunset: "2027-05-14T20:00Z",
    dusk: null,
    dawn: null,
    sunrise: "2027-05-15T02:30Z",
  },
  hours: [
    {
      at: "2027-05-14T21:00Z",
      airK: 280.15,
      dewPointK: 278.15,
      humidityRatio: 0.8,
      condensation: "likely",
      clothK: 277.15,
      windMS: 1,
      gustMS: 9,
      rainMmH: 0.5,
      skyK: 263.15,
    },
  ],
  lowK: 276.15,
  lapseK: -0.5,
  coldPoolK: -2,
  arriveBy: {
    at: "2027-05-14T18:00Z",
    darkAt: "2027-05-14T20:00Z",
    perBerthS: 900,
    berths: 14,
    helpers: 3,
    treeCheckS: 1_800,
    marginS: 1_200,
  },
  order: "foul",
  steps: ["look-up", "tarp-ridge"],
  windForce: 3,
  gustForce: 6,
  findings: [FINDING],
};

const HALVES = {
  under: { enough: "enough", item: "u" },
  over: { enough: "borderline", item: "o" },
  weaker: "over",
  helps: { change: "wear-hat", half: "over", gainK: 1.5 },
  notes: ["not-when-ill"],
} as const;

export const BALANCE: BerthWarmth = {
  by: "balance",
  ...HALVES,
  under: { ...HALVES.under, marginK: 3 },
  learnt: {
    by: "nights",
    under: { nights: 3, offsetK: 1.5, bandK: 3 },
    over: { nights: 0, offsetK: 0, bandK: 4 },
  },
  comfortK: 277.15,
  limitK: 272.15,
  bandK: 4,
  topWM2: 40,
  bottomWM2: 45,
  totalM2KPerW: 0.6,
  hours: [
    {
      at: "2027-05-14T21:00Z",
      airK: 280.15,
      windMS: 1,
      under: { needM2KPerW: 0.5, haveM2KPerW: 0.6, lossWM2: 40 },
      over: { needM2KPerW: 0.5, haveM2KPerW: 0.55, lossWM2: 42 },
      coldest: true,
    },
  ],
};

export const YOUTH: BerthWarmth = {
  by: "youth-rule",
  under: HALVES.under,
  over: HALVES.over,
  weaker: "over",
  helps: { change: "warmer-bag", half: "over" },
  notes: ["not-for-children"],
  spare: "m",
  checkedBy: "ada",
  checkAt: "2027-05-15T01:00Z",
};

export const DEALING: Dealing = {
  dealt: [
    {
      sleeper: "ada",
      items: [{ kind: "under", item: "u", number: "7", pinned: false }],
      marginK: 2.5,
    },
  ],
  shortages: [
    {
      kind: "hammock",
      lacking: ["bo"],
      competing: ["bo", "cy"],
      isFewest: true,
      items: ["h"],
      pieces: 1,
      borrow: [
        {
          kind: "hammock",
          count: 1,
          for: ["bo"],
          maxUserKg: 120,
          lengthM: 3.3,
          strapWidthM: 0.025,
          airK: 275.15,
        },
      ],
      because: [FINDING],
    },
  ],
  spareUnder: [{ item: "m", count: 2 }],
  spareUnderLacking: 1,
  groundPlaces: 3,
  leastMarginK: 1,
  massKg: 30,
  proven: true,
  provenOf: { below: true, leastMargin: true, order: true },
};

export const CUTS: CutList = {
  materials: [
    {
      material: "webbing",
      widthM: 0.025,
      pieces: [
        {
          material: "webbing",
          purpose: "strap",
          lengthM: 3.2,
          count: 2,
          allowanceM: 0.6,
          berths: ["1", "2"],
          widthM: 0.025,
        },
      ],
      patterns: [{ item: "w", stockM: 50, times: 1, cuts: [{ lengthM: 3.2, count: 2 }], restM: 43.6 }],
      toBuy: [{ lengthM: 50, count: 1 }],
      usedM: 50,
      boughtM: 50,
      leastBoughtM: 50,
      leastSpools: 1,
      piecesM: 6.4,
      proven: true,
    },
  ],
};

export const PACKING: PackingList = {
  sleepers: [
    {
      sleeper: "ada",
      berth: "1",
      lines: [{ carrier: "own", item: "h", what: "hammock", count: 1, numbers: ["7"], massKg: 0.6 }],
      massKg: 4.2,
      unweighed: 1,
      ofBodyRatio: 0.06,
    },
  ],
  groups: [{ group: "owls", lines: [{ carrier: "group", what: "peg", count: 20 }], massKg: 0, unweighed: 1 }],
  shared: [{ carrier: "spare", item: "m", what: "under", count: 1 }],
};

export const SPARES: readonly SpareBerth[] = [
  {
    id: "S1",
    headTree: "A",
    footTree: "B",
    spanM: 4,
    bearingRad: Math.PI / 2,
    pair: "p",
    stepItOut: true,
    serves: ["ada"],
    verdict: "look-again",
    findings: [FINDING],
  },
];

export const FIT: StoreFit = {
  lowK: 275.15,
  spansM: [3, 5],
  girthsM: [0.6, 1.5],
  people: [
    {
      sleeper: "ada",
      parts: [
        {
          kind: "hammock",
          choices: [{ item: "h", number: "7", reasons: [FINDING], marginK: 1 }],
          overkill: [{ item: "big", in: "load", needed: 80, has: 200, unit: "kg" }],
          lacking: [FINDING],
        },
      ],
      small: [{ what: "peg", count: 6, item: "p" }],
      slip: {
        sleeper: "ada",
        items: [
          {
            kind: "hammock",
            count: 1,
            item: "h",
            number: "7",
            lastInspected: { by: "Ada", on: "2027-04-01" },
          },
        ],
        outOn: "2027-05-14",
        backOn: "2027-05-17",
      },
    },
  ],
};
