import { markFigure } from "@nightspan/drawing";
import { Drawing } from "./drawing.tsx";

const MARK = markFigure(32);

/** The mark of the app: two posts and a line that hangs. */
export function Mark() {
  return (
    <span class="mark" aria-hidden="true">
      <Drawing scene={MARK} />
    </span>
  );
}
