import type { Camp, NightClock } from "@nightspan/core";
import { clockText } from "@nightspan/drawing";
import { fill, WORDS } from "../words.ts";

interface ArrivalProps {
  readonly clock: NightClock | undefined;
  readonly camp: Camp;
}

/** The one time that decides the evening, and what it is made of. */
export function Arrival({ clock, camp }: ArrivalProps) {
  const arrive = clock?.arriveBy;
  if (arrive === undefined) return <p class="lead">{WORDS.night.noArrive}</p>;
  const { at, darkAt, berths, perBerthS, helpers, treeCheckS, marginS } = arrive;
  return (
    <section class="arrive">
      <p class="arrive-by">
        <span class="head">{WORDS.night.arrive}</span>{" "}
        <b class="arrive-at">{clockText(at, camp.place).said}</b>
      </p>
      <p class="soft">
        {fill(WORDS.night.arriveOf, {
          dark: clockText(darkAt, camp.place).said,
          berths,
          each: minutes(perBerthS),
          helpers: helpers === 1 ? WORDS.night.helper : fill(WORDS.night.helpers, { count: helpers }),
          trees: minutes(treeCheckS),
          margin: minutes(marginS),
        })}
      </p>
    </section>
  );
}

function minutes(seconds: number): number {
  return Math.round(seconds / 60);
}
