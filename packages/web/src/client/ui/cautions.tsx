import { CAUTIONS, DEFERS_TO } from "@nightspan/edge";
import { WORDS } from "../words.ts";

/** What every plan says, whatever was computed, and whose word goes first. */
export function Cautions() {
  return (
    <section class="cautions">
      <h3>{WORDS.cautions.title}</h3>
      <ul>
        {CAUTIONS.map(({ key, text }) => (
          <li key={key}>{text}</li>
        ))}
      </ul>
      <p class="cautions-defer">{DEFERS_TO}</p>
    </section>
  );
}
