import type { PlannerReply, PlannerRequest } from "../../shared/planner-messages.ts";
import { showMistake } from "./mistake.ts";

/** One question to a worker of its own, which ends with the answer. Returns what ends it before. */
export function askOnce(request: PlannerRequest, answered: (reply: PlannerReply) => void): () => void {
  const worker = new Worker(new URL("../../worker/planner.worker.ts", import.meta.url), { type: "module" });
  worker.onmessage = ({ data }: MessageEvent<PlannerReply>) => {
    worker.terminate();
    if (data.kind === "mistake") showMistake(data.details);
    else answered(data);
  };
  worker.onerror = ({ message }) => showMistake(message);
  worker.postMessage(request);
  return () => worker.terminate();
}
