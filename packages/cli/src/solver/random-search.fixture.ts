export {
  bestByBruteForce,
  brokenRules,
  costOf,
  drawFrom,
  randomSearch,
  type Draw,
  type SearchSize,
} from "@nightspan/checks";
