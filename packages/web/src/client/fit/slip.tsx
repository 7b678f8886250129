import type { Camp, PersonFit, SlipLine } from "@nightspan/core";
import { sleeperName } from "../state/camp-names.ts";
import { sayDay } from "../state/today.ts";
import { Button } from "../ui/button.tsx";
import { Cautions } from "../ui/cautions.tsx";
import { Name } from "../ui/name.tsx";
import { fill, WORDS } from "../words.ts";

interface SlipProps {
  readonly person: PersonFit;
  readonly camp: Camp;
}

/** What is handed over and comes back. No weight and no age stand on it. */
export function Slip({ person: { slip }, camp }: SlipProps) {
  const [before = "", after = ""] = fill(WORDS.fit.slipFor, { name: "{name}" }).split("{name}");
  return (
    <section class="slip">
      <div class="slip-paper one-ink">
        <h2>{WORDS.fit.slip}</h2>
        <p class="lead">
          {before}
          <Name>{sleeperName(camp, slip.sleeper)}</Name>
          {after}
        </p>
        <dl class="slip-days">
          <div>
            <dt>{WORDS.fit.slipOut}</dt>
            <dd>{slip.outOn === undefined ? <Blank /> : sayDay(slip.outOn)}</dd>
          </div>
          <div>
            <dt>{WORDS.fit.slipBack}</dt>
            <dd>{slip.backOn === undefined ? <Blank /> : sayDay(slip.backOn)}</dd>
          </div>
        </dl>
        <ul class="slip-lines">
          {slip.items.map((line) => (
            <li key={`${line.kind} ${line.item ?? ""} ${line.number ?? ""}`}>
              <Line line={line} />
            </li>
          ))}
        </ul>
        <p class="slip-home">{WORDS.fit.slipLine}</p>
        <dl class="slip-days">
          <div>
            <dt>{WORDS.fit.slipHand}</dt>
            <dd>
              <Blank />
            </dd>
          </div>
          <div>
            <dt>{WORDS.fit.slipReturned}</dt>
            <dd>
              <Blank />
            </dd>
          </div>
        </dl>
        <Cautions />
      </div>
      <div class="screen-only">
        <Button kind="action" size="wide" onPress={() => print()}>
          {WORDS.fit.print}
        </Button>
      </div>
    </section>
  );
}

function Blank() {
  return <span class="slip-blank" />;
}

/** What it is, its number, when it was last looked over, and a box to tick when it is back. */
function Line({ line: { kind, count, item, number, lastInspected } }: { readonly line: SlipLine }) {
  const dealt =
    kind === "hammock" || kind === "suspension" || kind === "tarp" || kind === "under" || kind === "over";
  return (
    <>
      <span class="slip-box" />
      <b>{count} ×</b>
      <span>
        {WORDS.kit.things[kind]}
        {item === undefined ? null : (
          <>
            , <Name>{item}</Name>
          </>
        )}
        {number === undefined ? "" : `, ${fill(WORDS.fit.number, { number })}`}
        {dealt ? (
          <span class="note soft slip-looked">
            {lastInspected === undefined
              ? WORDS.fit.notInspected
              : fill(WORDS.fit.inspected, { day: sayDay(lastInspected.on), by: lastInspected.by })}
          </span>
        ) : null}
      </span>
    </>
  );
}
