export { bestByBruteForce, brokenRules, costOf, randomSearch, type SearchSize } from "@nightspan/checks";
