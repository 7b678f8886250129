const LATIN = '"Atkinson Hyperlegible Next Variable", "Atkinson Hyperlegible Next"';
const OTHERS = [
  "",
  " Arabic",
  " Devanagari",
  " SC",
  " JP",
  " KR",
  " Hebrew",
  " Thai",
  " Bengali",
  " Tamil",
].flatMap((script) => [`"Noto Sans${script} Variable"`, `"Noto Sans${script}"`]);

/** The face for Latin text, and what stands in for it. */
export const LATIN_STACK = `${LATIN}, "Noto Sans Variable", "Noto Sans", system-ui, sans-serif`;

/** The faces for names in other scripts: one face sets the whole name. */
export const NAME_STACK = `${OTHERS.join(", ")}, system-ui, sans-serif`;

/** The stack that sets a text whole: no letter of it changes face. */
export function fontStack(text: string): string {
  return OUTSIDE_LATIN.test(text) ? NAME_STACK : LATIN_STACK;
}

const OUTSIDE_LATIN = /[^\p{Script=Latin}\p{Script=Common}\p{Script=Inherited}]/u;
