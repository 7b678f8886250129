import type { BorrowWish, Camp, KitShortage } from "@nightspan/core";
import { length, provenLines } from "@nightspan/edge";
import { sleeperName } from "../state/camp-names.ts";
import { answer } from "../state/plan-store.ts";
import { Name } from "../ui/name.tsx";
import { fill, WORDS } from "../words.ts";
import { KitFigure } from "./kit-figure.tsx";

const ZERO_C_IN_K = 273.15;

/** Where the store is too small: who goes without, who else wants the same, and what to borrow. */
export function Shortages() {
  const now = answer.value;
  const dealing = now?.plan.dealing;
  if (now === undefined || dealing === undefined) return null;
  if (dealing.shortages.length === 0 && dealing.spareUnderLacking === 0) {
    return (
      <>
        <p class="lead">{WORDS.kit.nobodyLacks}</p>
        <GroundKept places={dealing.groundPlaces} />
      </>
    );
  }
  return (
    <section class="shortages">
      {dealing.shortages.map((shortage) => (
        <Shortage
          key={`${shortage.kind} ${shortage.lacking.join(" ")}`}
          shortage={shortage}
          camp={now.camp}
        />
      ))}
      <Proven lines={provenLines(dealing)} />
      {dealing.spareUnderLacking === 0 ? null : (
        <p>{fill(WORDS.kit.spareLacking, { count: dealing.spareUnderLacking })}</p>
      )}
      <GroundKept places={dealing.groundPlaces} />
    </section>
  );
}

function Proven({ lines }: { readonly lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <details class="why">
      <summary>{WORDS.log.why}</summary>
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </details>
  );
}

function GroundKept({ places }: { readonly places: number }) {
  return places === 0 ? null : <p>{fill(WORDS.kit.groundKept, { count: places })}</p>;
}

function Shortage({ shortage, camp }: { readonly shortage: KitShortage; readonly camp: Camp }) {
  const { kind, lacking, competing, isFewest, pieces, borrow } = shortage;
  return (
    <section class="shortage">
      <KitFigure kind={kind} />
      <div>
        <h3>{fill(WORDS.kit.lack, { kind: WORDS.kit.kinds[kind] })}</h3>
        <p class="lead">
          <Names ids={lacking.slice(0, FEW)} camp={camp} />
        </p>
        {lacking.length <= FEW ? null : (
          <details class="why">
            <summary>{fill(WORDS.kit.andMore, { count: lacking.length - FEW })}</summary>
            <Names ids={lacking.slice(FEW)} camp={camp} />
          </details>
        )}
        {competing.length <= lacking.length ? null : (
          <p class="soft">
            {fill(isFewest ? WORDS.kit.compete : WORDS.kit.competeFound, {
              people: competing.length,
              pieces,
            })}
          </p>
        )}
        <ul>
          {borrow.map((wish, place) => (
            <li key={place}>{sayBorrow(wish)}</li>
          ))}
        </ul>
      </div>
    </section>
  );
}

/** More names than that stand behind a press. */
const FEW = 4;

function Names({ ids, camp }: { readonly ids: readonly string[]; readonly camp: Camp }) {
  return (
    <>
      {ids.map((id, place) => (
        <span key={id}>
          {place === 0 ? "" : ", "}
          <Name>{sleeperName(camp, id)}</Name>
        </span>
      ))}
    </>
  );
}

/** "Borrow or buy 2: under insulation, for 3 °C or colder." */
function sayBorrow({ kind, count, maxUserKg, lengthM, strapWidthM, airK }: BorrowWish): string {
  const least = [
    ...(maxUserKg === undefined ? [] : [fill(WORDS.kit.leastUser, { mass: Math.ceil(maxUserKg) })]),
    ...(lengthM === undefined ? [] : [fill(WORDS.kit.leastLength, { length: length(lengthM) })]),
    ...(strapWidthM === undefined
      ? []
      : [fill(WORDS.kit.leastWidth, { width: Math.round(strapWidthM * 1000) })]),
    ...(airK === undefined ? [] : [fill(WORDS.kit.leastAir, { air: sayDegrees(airK) })]),
  ];
  return fill(WORDS.kit.borrow, { count, what: [WORDS.kit.kinds[kind], ...least].join(", ") });
}

function sayDegrees(kelvin: number): string {
  const whole = Math.floor(kelvin - ZERO_C_IN_K);
  return whole < 0 ? `\u2212${Math.abs(whole)}` : String(whole);
}
