const LATIN = '"Atkinson Hyperlegible Next Variable", "Atkinson Hyperlegible Next"';
const OTHERS = ["", " Arabic", " Devanagari", " SC", " JP", " KR", " Hebrew", " Thai", " Bengali", " Tamil"]
  .flatMap((script) => [`"Noto Sans${script} Variable"`, `"Noto Sans${script}"`])
  .join(", ");

/** The face for Latin text; a name in another script within a sentence takes its own face, whole. */
export const LATIN_STACK = `${LATIN}, ${OTHERS}, system-ui, sans-serif`;

/** The faces for names in other scripts: one face sets the whole name. */
export const NAME_STACK = `${OTHERS}, system-ui, sans-serif`;

/**
 * The stack that sets a text whole: no letter of a name changes face. A name with Latin letters that the Latin face lacks
 * (Vietnamese, Yoruba) takes the other face too; a sentence does not, for it is not one name.
 */
export function fontStack(text: string, isName = false): string {
  if (isName && BEYOND_LATIN_FACE.test(text)) return NAME_STACK;
  return OUTSIDE_LATIN.test(text) && !LATIN_LETTER.test(text) ? NAME_STACK : LATIN_STACK;
}

const OUTSIDE_LATIN = /[^\p{Script=Latin}\p{Script=Common}\p{Script=Inherited}]/u;
const LATIN_LETTER = /\p{Script=Latin}/u;
/** Latin Extended Additional from its Vietnamese letters on, of which the face has none. */
const BEYOND_LATIN_FACE = /[\u1EA0-\u1EF1]/;
