import { describe, expect, it } from "vitest";
import { direction } from "./direction.ts";

const NAME = "\u2068أمينة خليل\u2069";

describe("direction", () => {
  it("is that of what stands outside of a name that is kept apart", () => {
    expect(direction(`9. ${NAME} looks in at 03:00.`)).toBe("ltr");
    expect(direction(`${NAME}, berth 9`)).toBe("ltr");
    expect(direction(`\u2068Ada\u2069 أمينة`)).toBe("rtl");
  });

  it("is the name's own where nothing else is said", () => {
    expect(direction(NAME)).toBe("rtl");
    expect(direction("أمينة")).toBe("rtl");
    expect(direction("9.")).toBe("ltr");
  });
});
