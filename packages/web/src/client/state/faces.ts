import { effect } from "@preact/signals";
import { opened } from "./camp-store.ts";

const HAN = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}]/u;

/** Chinese letters come in a hundred small files; their list is only loaded once a camp needs one. */
export function followScripts(): void {
  let loaded = false;
  effect(() => {
    const camp = opened.value?.camp;
    if (loaded || camp === undefined) return;
    if (![camp.name, ...camp.sleepers.map(({ name }) => name)].some((name) => HAN.test(name))) return;
    loaded = true;
    void import("./han-faces.ts");
  });
}
