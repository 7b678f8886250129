import { useSignal } from "@preact/signals";
import { countNights } from "../log/learnt.tsx";
import { SleeperNight } from "../log/sleeper-night.tsx";
import { opened } from "../state/camp-store.ts";
import { forgetLog, logNotKept, nights, takeLogText, type NightOfLog } from "../state/log-store.ts";
import { ask } from "../state/plan-store.ts";
import { saveLogFile } from "../state/save-files.ts";
import { Button } from "../ui/button.tsx";
import { Dialog } from "../ui/dialog.tsx";
import { FileButton } from "../ui/file-button.tsx";
import { LinkButton } from "../ui/link-button.tsx";
import { fill, WORDS } from "../words.ts";
import { CampFrame } from "./camp-frame.tsx";

/** How the night was, sleeper by sleeper; what is learnt for the next; the log as a file. */
export function LogPage() {
  const night = nightInHand();
  const sleepers = opened.value?.camp.sleepers ?? [];
  return (
    <CampFrame page="log">
      <div class="list-page list-page-wide">
        <h2>{WORDS.log.title}</h2>
        {night === undefined ? (
          <>
            <p class="lead">{WORDS.log.noDate}</p>
            <LinkButton to={{ page: "night" }}>{WORDS.log.toNight}</LinkButton>
          </>
        ) : (
          <>
            <p class="lead">{WORDS.log.lead}</p>
            <div class="log-sleepers">
              {sleepers.map((sleeper) => (
                <SleeperNight key={sleeper.id} sleeper={sleeper} night={night} />
              ))}
            </div>
          </>
        )}
        <LogFile />
      </div>
    </CampFrame>
  );
}

function LogFile() {
  const bad = useSignal(false);
  const asking = useSignal(false);
  const open = async (file: File): Promise<void> => {
    bad.value = !takeLogText(await file.text());
    if (!bad.value) ask();
  };
  return (
    <section>
      <p class="note">{fill(WORDS.log.stays, { nights: countNights(nights.value.length) })}</p>
      {logNotKept.value ? <p role="status">{WORDS.log.notKept}</p> : null}
      {bad.value ? <p role="status">{WORDS.log.badFile}</p> : null}
      <div class="choice-row">
        <Button onPress={saveLogFile}>{WORDS.log.save}</Button>
        <FileButton accept=".json,application/json" onFile={(file) => void open(file)}>
          {WORDS.log.open}
        </FileButton>
        <Button
          onPress={() => (asking.value = true)}
          offBecause={nights.value.length === 0 ? WORDS.log.nothing : undefined}
        >
          {WORDS.log.forget}
        </Button>
      </div>
      {asking.value ? <ForgetDialog onClose={() => (asking.value = false)} /> : null}
    </section>
  );
}

/** Forgetting cannot be taken back, so it is asked first. */
function ForgetDialog({ onClose }: { readonly onClose: () => void }) {
  const forget = (): void => {
    forgetLog();
    ask();
    onClose();
  };
  return (
    <Dialog title={WORDS.log.forget} onClose={onClose}>
      <p>{fill(WORDS.log.forgetAsk, { nights: countNights(nights.value.length) })}</p>
      <div class="choice-row">
        <Button onPress={saveLogFile}>{WORDS.log.save}</Button>
        <Button onPress={forget}>{WORDS.log.forgetNow}</Button>
        <Button onPress={onClose}>{WORDS.log.keep}</Button>
      </div>
    </Dialog>
  );
}

/** The night of the camp in hand, where it has a date. */
function nightInHand(): NightOfLog | undefined {
  const { name, date, night } = opened.value?.document ?? {};
  if (name === undefined || date === undefined) return undefined;
  const low = night?.low_c;
  return { camp: name, date, ...(low === undefined ? {} : { plannedLowC: low }) };
}
