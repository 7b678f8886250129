import type { Camp, Plan } from "@nightspan/core";
import { cutTable } from "./cut-sheet.ts";
import { strapInspectionTable, treeInspectionTable } from "./inspection-sheets.ts";
import { kitListTable } from "./kit-list.ts";
import { riskTable } from "./risk-sheet.ts";
import { sleepingPlanTable } from "./sleeping-plan.ts";
import type { SheetTable } from "./table-sheet.ts";
import { timelineTable } from "./timeline-sheet.ts";

/** Every paper of a camp that is a table; what the plan has nothing for is left out. */
export function campTables(plan: Plan, camp: Camp): readonly SheetTable[] {
  return [
    sleepingPlanTable(plan, camp),
    timelineTable(plan, camp),
    kitListTable(plan, camp),
    cutTable(plan, camp),
    treeInspectionTable(plan, camp),
    strapInspectionTable(camp),
    riskTable(plan, camp),
  ].filter((table) => table !== undefined);
}
