export type { ModelAnswer, ModelTools } from "./door.ts";
export { MODEL_NAMES, MODELS, runModel } from "./run-model.ts";
