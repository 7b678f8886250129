import type { ComponentChildren } from "preact";

export type Paper = "a6" | "a4";

/** One card as it is printed; without a back where the other side stays white. */
export interface PrintedCard {
  readonly id: string;
  readonly front: ComponentChildren;
  readonly back?: ComponentChildren;
}

interface CardSheetsProps {
  readonly cards: readonly PrintedCard[];
  readonly paper: Paper;
}

/** Cards in the order of printing: four fronts and their four backs to a sheet, or one by one. */
export function CardSheets({ cards, paper }: CardSheetsProps) {
  return (
    <div class="sheets">
      {inGroups(cards, paper === "a4" ? 4 : 1).map((group) => (
        <div class="sheet-pair" key={group[0]?.id}>
          <div class="card-sheet">{group.map(({ front }) => front)}</div>
          {group.some(({ back }) => back !== undefined) ? (
            <div class="card-sheet card-sheet-back">{group.map(({ back }) => back)}</div>
          ) : null}
        </div>
      ))}
    </div>
  );
}

function inGroups<T>(items: readonly T[], size: number): readonly (readonly T[])[] {
  return Array.from({ length: Math.ceil(items.length / size) }, (_, index) =>
    items.slice(index * size, (index + 1) * size),
  );
}
