/** Both sides of one card as SVG. */
export interface CardSides {
  readonly front: string;
  readonly back: string;
}

const TO_A_SHEET = 4;

/**
 * The cards as one page to print: A4, four A6 cards to a sheet with cut marks, fronts and backs in turn so that a
 * printer that turns the sheet on its long edge brings each back behind its front.
 */
export function cardSheets(camp: string, cards: readonly CardSides[]): string {
  const sheets: string[] = [];
  for (let first = 0; first < cards.length; first += TO_A_SHEET) {
    const four = cards.slice(first, first + TO_A_SHEET);
    sheets.push(sheet(four.map(({ front }, place) => cell(front, place))));
    sheets.push(sheet(four.map(({ back }, place) => cell(back, place + (place % 2 === 0 ? 1 : -1)))));
  }
  return [
    '<!doctype html>\n<html lang="en-GB">\n<head>\n<meta charset="utf-8">\n',
    `<title>${escaped(`Berth cards, ${camp}`)}</title>\n`,
    `<style>\n${STYLE}</style>\n</head>\n<body>\n`,
    ...sheets,
    "</body>\n</html>\n",
  ].join("");
}

function sheet(cells: readonly string[]): string {
  return `<section>\n${cells.join("")}<i class="across"></i><i class="down"></i>\n</section>\n`;
}

/** A card in one of the four places: left to right, then below. */
function cell(svg: string, place: number): string {
  const column = place % 2 === 0 ? "left" : "right";
  const row = place < 2 ? "upper" : "lower";
  return `<div class="${column} ${row}">${svg.replace(/^<\?xml[^>]*\?>\s*/, "")}</div>\n`;
}

/** The two lines of cuts are marked at the sheet's edges only, so that no line runs through a card. */
const STYLE = `@page { size: A4; margin: 0 }
body { margin: 0; background: #fff }
section { position: relative; width: 210mm; height: 296.5mm; overflow: hidden; break-after: page }
div { position: absolute; width: 105mm; height: 148mm }
.left { left: 0 }
.right { left: 105mm }
.upper { top: 0 }
.lower { top: 148mm }
svg { display: block }
i { position: absolute; border: 0 solid #000 }
.across { left: 0; top: 148mm; width: 204mm; border-width: 0 3mm; height: 0.2mm }
.down { left: 105mm; top: 0; height: 290mm; border-width: 3mm 0; width: 0.2mm }
@media screen { section { margin: 8mm auto; box-shadow: 0 0 0 0.3mm #888 } }
`;

function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
}
