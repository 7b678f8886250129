import type { Camp, FitChoice, FitPart, Overkill, PersonFit, StoreFit } from "@nightspan/core";
import { length, namesOf, sayFinding, whyFitLines } from "@nightspan/edge";
import { opened } from "../state/camp-store.ts";
import { pinItem, pinsOf } from "../state/kit-use.ts";
import { KitFigure } from "../store/kit-figure.tsx";
import { Button } from "../ui/button.tsx";
import { Name } from "../ui/name.tsx";
import { fill, WORDS } from "../words.ts";

interface FitAnswerProps {
  readonly fit: StoreFit;
  readonly person: PersonFit;
  readonly camp: Camp;
}

/** What comes down from the shelves, in the order of choosing: two choices at most of each, and why. */
export function FitAnswer({ fit, person, camp }: FitAnswerProps) {
  const [near, far] = fit.spansM;
  return (
    <section class="fit-answer">
      <h2>{WORDS.fit.answer}</h2>
      <p class="soft">{fill(WORDS.fit.range, { near: length(near, 1), far: length(far, 1) })}</p>
      <p class="note">{WORDS.warmth.notFor}</p>
      {whyFitLines(fit).map((line) => (
        <details key={line} class="why">
          <summary>{WORDS.fit.reasons}</summary>
          <p class="note">{line}</p>
        </details>
      ))}
      {person.parts.map((part) => (
        <Part key={part.kind} part={part} sleeper={person.sleeper} camp={camp} />
      ))}
      <h3>{WORDS.fit.small}</h3>
      <ul class="fit-small">
        {person.small.map(({ what, count }) => (
          <li key={what}>
            <b>{count}</b> {WORDS.kit.things[what]}
          </li>
        ))}
      </ul>
    </section>
  );
}

interface PartProps {
  readonly part: FitPart;
  readonly sleeper: string;
  readonly camp: Camp;
}

function Part({ part, sleeper, camp }: PartProps) {
  const { kind, choices, overkill, lacking } = part;
  const names = namesOf(camp);
  return (
    <section class="fit-part" aria-label={WORDS.fit.parts[kind]}>
      <h3>{WORDS.fit.parts[kind]}</h3>
      {choices.length === 0 ? (
        <div class="fit-lacking">
          <b>{WORDS.fit.nothing}</b>
          {lacking.map((finding) => (
            <p key={`${finding.rule} ${finding.subject}`}>{sayFinding(finding, names)}</p>
          ))}
        </div>
      ) : (
        <ol class="fit-two">
          {choices.map((choice, place) => (
            <li key={`${choice.item} ${choice.number ?? ""}`}>
              <Choice choice={choice} place={place} kind={kind} sleeper={sleeper} camp={camp} />
            </li>
          ))}
        </ol>
      )}
      {overkill.length === 0 ? null : (
        <details class="why">
          <summary>{WORDS.fit.overkill}</summary>
          <ul class="sentences note">
            {overkill.map((one) => (
              <li key={`${one.item} ${one.in}`}>{sayOverkill(one)}</li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

interface ChoiceProps {
  readonly choice: FitChoice;
  readonly place: number;
  readonly kind: FitPart["kind"];
  readonly sleeper: string;
  readonly camp: Camp;
}

/** The better first, with what speaks for it; the other can be taken instead, and the rest follows it. */
function Choice({ choice: { item, number, reasons }, place, kind, sleeper, camp }: ChoiceProps) {
  const document = opened.value?.document;
  const person = document?.sleepers.find(({ id }) => id === sleeper);
  const kept = person !== undefined && pinsOf(person, document?.kit ?? [])[kind] === item;
  const names = namesOf(camp);
  return (
    <div class={place === 0 ? "fit-choice fit-first" : "fit-choice"}>
      <div class="fit-thing">
        <KitFigure kind={kind} />
        <span class="note soft">{place === 0 ? WORDS.fit.first : WORDS.fit.second}</span>
        <b class="lead">
          <Name>{item}</Name>
        </b>
        {number === undefined ? null : <span class="note">{fill(WORDS.fit.number, { number })}</span>}
      </div>
      <ul class="fit-reasons note">
        {reasons.map((finding) => (
          <li key={`${finding.rule} ${finding.subject}`} class={`fit-reason fit-${finding.verdict}`}>
            {sayFinding(finding, names)}
          </li>
        ))}
      </ul>
      {kept ? (
        <Button pressed onPress={() => pinItem(sleeper, kind, undefined)}>
          {WORDS.fit.kept}
        </Button>
      ) : place === 0 ? null : (
        <Button onPress={() => pinItem(sleeper, kind, item)}>{WORDS.fit.take}</Button>
      )}
    </div>
  );
}

function sayOverkill({ item, in: what, needed, has }: Overkill): string {
  const shown = (value: number): string => (what === "load" ? String(Math.round(value)) : value.toFixed(2));
  return fill(WORDS.fit.over[what], { item, needed: shown(needed), has: shown(has) });
}
