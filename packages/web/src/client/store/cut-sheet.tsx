import type { CutPattern, CutPiece, MaterialCuts } from "@nightspan/core";
import { length } from "@nightspan/edge";
import { answer } from "../state/plan-store.ts";
import { Name } from "../ui/name.tsx";
import { useSize } from "../ui/use-size.ts";
import { fill, WORDS } from "../words.ts";

/** What is cut from which spool: each spool unrolled to scale, and whom each piece is for. */
export function CutSheet() {
  const cuts = answer.value?.plan.cuts;
  if (cuts === undefined) return <p class="lead">{WORDS.kit.notCut}</p>;
  if (cuts.materials.length === 0) return <p class="lead">{WORDS.kit.nothingToCut}</p>;
  return (
    <div class="cuts">
      {cuts.materials.map((material) => (
        <Material key={`${material.material} ${material.widthM ?? ""}`} cuts={material} />
      ))}
    </div>
  );
}

function Material({ cuts }: { readonly cuts: MaterialCuts }) {
  const [frame, size] = useSize();
  const widthPx = size.value?.widthPx ?? 0;
  const longest = Math.max(...cuts.patterns.map(({ stockM }) => stockM), 0.1);
  return (
    <section class="cut-material">
      <h3>
        {WORDS.kit.materials[cuts.material]}
        {cuts.widthM === undefined ? "" : fill(WORDS.kit.wide, { width: Math.round(cuts.widthM * 1000) })}
      </h3>
      <p>{sayUsed(cuts)}</p>
      {cuts.toBuy.map(({ lengthM, count }) => (
        <p key={lengthM} class="lead">
          {fill(WORDS.kit.buy, { count, length: length(lengthM, 1) })}
        </p>
      ))}
      <div class="spools" ref={frame}>
        {widthPx < LEAST_PX
          ? null
          : cuts.patterns.map((pattern, place) => (
              <Spool key={place} pattern={pattern} pxPerM={(widthPx - DISC_PX) / longest} />
            ))}
      </div>
      <Pieces pieces={cuts.pieces} />
    </section>
  );
}

function sayUsed({ usedM, piecesM, proven }: MaterialCuts): string {
  const said = { used: length(usedM, 1), pieces: length(piecesM, 1) };
  return fill(proven ? WORDS.kit.usedProven : WORDS.kit.used, said);
}

const LEAST_PX = 200;
const DISC_PX = 76;
const STRIP_PX = 26;
const TOP_PX = 24;

interface SpoolProps {
  readonly pattern: CutPattern;
  readonly pxPerM: number;
}

/** One spool with its cord drawn off to scale, cut where it is cut; what is left over is hollow. */
function Spool({ pattern, pxPerM }: SpoolProps) {
  const cuts = pattern.cuts.flatMap(({ lengthM, count }) => Array.from({ length: count }, () => lengthM));
  const starts = cuts.map((_, place) => cuts.slice(0, place).reduce((sum, lengthM) => sum + lengthM, 0));
  const endM = cuts.reduce((sum, lengthM) => sum + lengthM, 0);
  const widthPx = DISC_PX + pattern.stockM * pxPerM;
  const y = TOP_PX;
  return (
    <figure class="spool">
      <figcaption class="note">
        <b>{fill(WORDS.kit.times, { times: pattern.times, length: length(pattern.stockM, 1) })}</b>
        {pattern.item === undefined ? (
          ` ${WORDS.kit.toBuy}`
        ) : (
          <>
            {" "}
            <Name>{pattern.item}</Name>
          </>
        )}
        , {fill(WORDS.kit.rest, { rest: length(pattern.restM) })}
      </figcaption>
      <svg viewBox={`0 0 ${widthPx} 64`} width={widthPx} height="64" aria-hidden="true">
        <circle class="spool-disc" cx="32" cy="36" r="25" />
        <circle class="spool-disc" cx="32" cy="36" r="8" />
        <path class="spool-off" d={`M32 11H${DISC_PX}`} />
        <rect
          class="spool-rest"
          x={DISC_PX + endM * pxPerM}
          y={y}
          width={Math.max(0, pattern.stockM - endM) * pxPerM}
          height={STRIP_PX}
        />
        {cuts.map((lengthM, place) => (
          <g key={place}>
            <rect
              class="spool-piece"
              x={DISC_PX + (starts[place] ?? 0) * pxPerM}
              y={y}
              width={lengthM * pxPerM}
              height={STRIP_PX}
            />
            {lengthM * pxPerM < LABEL_PX ? null : (
              <text
                x={DISC_PX + ((starts[place] ?? 0) + lengthM / 2) * pxPerM}
                y={y + 18}
                text-anchor="middle"
              >
                {lengthM.toFixed(2)}
              </text>
            )}
          </g>
        ))}
      </svg>
    </figure>
  );
}

const LABEL_PX = 40;

function Pieces({ pieces }: { readonly pieces: readonly CutPiece[] }) {
  return (
    <table class="trees">
      <thead>
        <tr>
          <th scope="col" class="number-cell">
            {WORDS.kit.count}
          </th>
          <th scope="col" class="number-cell">
            {WORDS.kit.pieceLength}
          </th>
          <th scope="col">{WORDS.kit.pieceFor}</th>
          <th scope="col" class="wide-cell">
            {WORDS.kit.pieceBerths}
          </th>
        </tr>
      </thead>
      <tbody>
        {pieces.map((piece) => (
          <tr key={`${piece.purpose} ${piece.lengthM}`}>
            <td class="number-cell">{piece.count}</td>
            <td class="number-cell">{length(piece.lengthM)}</td>
            <td>{WORDS.kit.purposes[piece.purpose]}</td>
            <td class="wide-cell">{[...new Set(piece.berths)].join(", ")}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
