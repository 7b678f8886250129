import type { CutPiece, MaterialCuts } from "@nightspan/core";
import { cutListScene } from "@nightspan/drawing";
import { labels, length, measure } from "@nightspan/edge";
import { answer } from "../state/plan-store.ts";
import { FittedScene } from "../ui/fitted-scene.tsx";
import { fill, WORDS } from "../words.ts";

/** What is cut from which spool: each spool unrolled to scale, and whom each piece is for. */
export function CutSheet() {
  const plan = answer.value?.plan;
  const cuts = plan?.cuts;
  if (plan === undefined || cuts === undefined) return <p class="lead">{WORDS.kit.notCut}</p>;
  if (cuts.materials.length === 0) return <p class="lead">{WORDS.kit.nothingToCut}</p>;
  return (
    <div class="cuts">
      <Buys materials={cuts.materials} />
      <FittedScene
        of={[plan]}
        scene={(widthPx) => cutListScene(plan, { widthPx, words: { labels, measure } })}
      />
      {cuts.materials.map((material) => (
        <section key={`${material.material} ${material.widthM ?? ""}`}>
          <h3 class="section-title">{nameOf(material.material, material.widthM)}</h3>
          <Pieces pieces={material.pieces} />
        </section>
      ))}
    </div>
  );
}

/** Everything to buy in one line, spool by spool. */
function Buys({ materials }: { readonly materials: readonly MaterialCuts[] }) {
  const spools = materials.flatMap(({ toBuy, material, widthM }) =>
    toBuy.map(({ lengthM, count }) =>
      fill(WORDS.kit.spool, { count, length: length(lengthM, 0), what: nameOf(material, widthM) }),
    ),
  );
  return spools.length === 0 ? null : (
    <p class="lead">{fill(WORDS.kit.buy, { spools: spools.join("; ") })}</p>
  );
}

function nameOf(material: MaterialCuts["material"], widthM: number | undefined): string {
  const wide = widthM === undefined ? "" : fill(WORDS.kit.wide, { width: Math.round(widthM * 1000) });
  return WORDS.kit.materials[material] + wide;
}

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
