import type { Camp } from "@nightspan/core";
import { canDraw, clusters, type Faces } from "./faces.ts";
import { kept } from "./kept.ts";

/** What papers write in place of names whose letters no face has. */
export interface DrawableNames {
  /** The text with such names replaced; what is left of such letters becomes the name of their script, in brackets. */
  readonly drawable: (text: string) => string;
  /** One sentence for each name that is written otherwise. */
  readonly remarks: readonly string[];
}

/** Names that cannot be drawn are written as the id that the camp file gives them, never as empty boxes. */
export function drawableNames(camp: Camp, faces: Faces): DrawableNames {
  const written = new Map<string, string>();
  const take = (name: string, id: string, kind: string, index: number): void => {
    if (canDraw(faces, name) || written.has(name)) return;
    written.set(name, canDraw(faces, id) ? id : `${kind} ${index + 1}`);
  };
  camp.sleepers.forEach(({ name, id }, index) => {
    take(name, id, "sleeper", index);
  });
  camp.ground?.trees.forEach(({ tag, id }, index) => {
    take(tag, id, "tree", index);
  });
  const longestFirst = [...written].sort(([one], [other]) => other.length - one.length);
  return {
    drawable: kept((text) => {
      if (canDraw(faces, text)) return text;
      const named = longestFirst.reduce((said, [name, id]) => said.replaceAll(name, id), text);
      return withScriptsNamed(named, faces);
    }),
    remarks: [...written].map(
      ([name, id]) => `PDF: no letters for ${scriptOf(name, faces)}, so ${name} is written as ${id}`,
    ),
  };
}

/** Each stretch of letters that no face has becomes "[Khmer]". */
function withScriptsNamed(text: string, faces: Faces): string {
  let said = "";
  let missing = "";
  const close = (): void => {
    if (missing !== "") said += `[${scriptOf(missing, faces)}]`;
    missing = "";
  };
  for (const cluster of clusters(text)) {
    if (faces.faceOf(cluster) === undefined) missing += cluster;
    else {
      close();
      said += cluster;
    }
  }
  close();
  return said;
}

/** The script of the first letter that no face has. */
function scriptOf(text: string, faces: Faces): string {
  const letter = clusters(text).find((cluster) => faces.faceOf(cluster) === undefined) ?? "";
  return SCRIPTS.find((script) => new RegExp(`\\p{Script=${script}}`, "u").test(letter)) ?? "signs";
}

const SCRIPTS = [
  "Han",
  "Hangul",
  "Hiragana",
  "Katakana",
  "Thai",
  "Bengali",
  "Tamil",
  "Telugu",
  "Gujarati",
  "Gurmukhi",
  "Kannada",
  "Malayalam",
  "Sinhala",
  "Khmer",
  "Myanmar",
  "Tibetan",
  "Ethiopic",
  "Mongolian",
  "Cherokee",
];
