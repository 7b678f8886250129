import { keepsNothing } from "../state/camp-store.ts";
import { newVersion, useNewVersion } from "../state/versions.ts";
import { WORDS } from "../words.ts";
import { Button } from "./button.tsx";

/** The few things the app says of itself: a new version, and a device that keeps nothing. */
export function Notices() {
  return (
    <div class="notices" role="status">
      {newVersion.value ? (
        <p class="notice">
          {WORDS.app.newVersion} <Button onPress={useNewVersion}>{WORDS.app.useNewVersion}</Button>
        </p>
      ) : null}
      {keepsNothing.value ? <p class="notice">{WORDS.app.keepsNothing}</p> : null}
    </div>
  );
}
