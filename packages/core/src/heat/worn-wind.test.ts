import { checks } from "@nightspan/checks";
import rows from "./worn-wind.checks.json" with { type: "json" };
import { wornWindRatio } from "./worn-wind.ts";

checks(rows, ({ wind_m_s, walk_m_s }) => {
  const worn = { windMS: wind_m_s, walkMS: walk_m_s };
  return { air: wornWindRatio(worn, "air"), worn: wornWindRatio(worn, "worn") };
});
