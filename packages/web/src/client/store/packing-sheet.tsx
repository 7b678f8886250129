import type { GroupPacking, PackingLine, Plan, SleeperPacking } from "@nightspan/core";
import { sleeperName } from "../state/camp-names.ts";
import { answer } from "../state/plan-store.ts";
import { isTicked, tick } from "../state/ticks.ts";
import { Name } from "../ui/name.tsx";
import { NumberPlate } from "../ui/number-plate.tsx";
import { fill, WORDS } from "../words.ts";

/** What everybody packs, group by group and what is shared; each line is ticked when packed and when it is back. */
export function PackingSheet() {
  const now = answer.value;
  const packing = now?.plan.packing;
  if (now === undefined || packing === undefined) return <p class="lead">{WORDS.kit.notPacked}</p>;
  const everything = [
    ...packing.sleepers.flatMap(({ sleeper, lines }) => boxesOf(`sleeper/${sleeper}`, lines)),
    ...packing.groups.flatMap(({ group = "", lines }) => boxesOf(`group/${group}`, lines)),
    ...boxesOf("shared", packing.shared),
  ];
  const done = everything.filter((box) => isTicked(`${box} packed`)).length;
  return (
    <div class="packing">
      <p class="lead">{fill(WORDS.kit.packedOf, { done, of: everything.length })}</p>
      <p class="note soft">{WORDS.kit.massNote}</p>
      {packing.sleepers.map((one) => (
        <SleeperPack
          key={one.sleeper}
          packing={one}
          plan={now.plan}
          name={sleeperName(now.camp, one.sleeper)}
        />
      ))}
      {packing.groups.map((one) => (
        <GroupPack key={one.group ?? ""} packing={one} />
      ))}
      {packing.shared.length === 0 ? null : (
        <section class="pack">
          <h3>{WORDS.kit.forAll}</h3>
          <PackLines where="shared" lines={packing.shared} />
        </section>
      )}
    </div>
  );
}

interface SleeperPackProps {
  readonly packing: SleeperPacking;
  readonly plan: Plan;
  readonly name: string;
}

function SleeperPack({ packing, plan, name }: SleeperPackProps) {
  const berth = plan.berths.find(({ id }) => id === packing.berth);
  return (
    <section class="pack" aria-label={name}>
      <h3 class="deal-who">
        {berth === undefined ? null : <NumberPlate id={berth.id} verdict={berth.verdict} />}
        <Name>{name}</Name>
      </h3>
      <Load massKg={packing.massKg} ofBody={packing.ofBodyRatio} unweighed={packing.unweighed} />
      <PackLines where={`sleeper/${packing.sleeper}`} lines={packing.lines} />
    </section>
  );
}

function GroupPack({ packing: { group, lines, massKg, unweighed } }: { readonly packing: GroupPacking }) {
  if (lines.length === 0) return null;
  return (
    <section class="pack">
      <h3>
        {group === undefined ? (
          WORDS.kit.ofNoGroup
        ) : (
          <>
            {WORDS.kit.ofGroup} <Name>{group}</Name>
          </>
        )}
      </h3>
      <Load massKg={massKg} unweighed={unweighed} />
      <PackLines where={`group/${group ?? ""}`} lines={lines} />
    </section>
  );
}

/** Share of the body's weight that fills the whole bar: what a fit walker carries with all else they need. */
const WHOLE_BAR = 0.2;

interface LoadProps {
  readonly massKg: number;
  readonly ofBody?: number;
  readonly unweighed: number;
}

/** The load as one bar; the tick is a tenth of the body's own weight. */
function Load({ massKg, ofBody, unweighed }: LoadProps) {
  return (
    <p class="load note">
      {ofBody === undefined ? null : (
        <svg viewBox="0 0 200 20" preserveAspectRatio="none" aria-hidden="true">
          <path class="load-line" d="M0 10H200" />
          <path class="load-bar" d={`M0 10H${Math.min(1, ofBody / WHOLE_BAR) * 200}`} />
          <path class="load-tick" d="M100 0V20" />
        </svg>
      )}
      <span>
        {fill(WORDS.kit.load, { mass: massKg.toFixed(1) })}
        {unweighed === 0 ? "" : fill(WORDS.kit.unweighed, { count: unweighed })}
      </span>
    </p>
  );
}

interface PackLinesProps {
  readonly where: string;
  readonly lines: readonly PackingLine[];
}

function PackLines({ where, lines }: PackLinesProps) {
  const boxes = boxesOf(where, lines);
  return (
    <ul class="pack-lines">
      {lines.map((line, place) => (
        <li key={boxes[place]} class="pack-line">
          <span class="pack-count">{line.count} ×</span>
          <span class="pack-what">
            {WORDS.kit.things[line.what]}
            {line.item === undefined ? null : (
              <span class="note soft">
                {" "}
                <Name>{line.item}</Name>
                {line.numbers === undefined ? "" : ` ${line.numbers.join(", ")}`}
              </span>
            )}
          </span>
          {(["packed", "returned"] as const).map((state) => (
            <Box key={state} box={`${boxes[place] ?? ""} ${state}`} word={WORDS.kit[state]} />
          ))}
        </li>
      ))}
    </ul>
  );
}

function Box({ box, word }: { readonly box: string; readonly word: string }) {
  return (
    <label class="pack-box note">
      <input
        type="checkbox"
        class="check"
        checked={isTicked(box)}
        onChange={(event) => tick(box, event.currentTarget.checked)}
      />
      {word}
    </label>
  );
}

function boxesOf(where: string, lines: readonly PackingLine[]): readonly string[] {
  return lines.map(({ carrier, what, item }) => `${where}/${carrier}/${what}/${item ?? ""}`);
}
