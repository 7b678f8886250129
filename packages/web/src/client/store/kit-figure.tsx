import type { KitDocument } from "@nightspan/edge";

type Kind = KitDocument["kind"];

interface KitFigureProps {
  readonly kind: Kind;
  readonly state?: KitDocument["state"];
  /** Of a suspension or of a layer: which of the two ways it is made. */
  readonly sort?: string | undefined;
}

/** A thing of the store as it stands on a shelf. What is set aside is dashed, what is retired is struck out. */
export function KitFigure({ kind, state = "in-use", sort }: KitFigureProps) {
  return (
    <svg class={`kit-figure kit-${kind} kit-${state}`} viewBox="0 0 72 56" aria-hidden="true">
      {sort === "whoopie-sling" ? SLING : FIGURES[kind]}
      {state === "retired" ? <path class="kit-struck" d="M8 50L64 6" /> : null}
    </svg>
  );
}

const SLING = (
  <>
    <circle class="kit-strap" cx="30" cy="36" r="17" />
    <circle class="kit-strap" cx="30" cy="36" r="9" />
    <path class="kit-strap" d="M44 26L60 12" />
    <circle class="kit-line" cx="63" cy="9" r="5" />
  </>
);

const FIGURES: Readonly<Record<Kind, preact.JSX.Element>> = {
  hammock: (
    <>
      <rect class="kit-cloth" x="6" y="24" width="60" height="31" rx="15" />
      <circle class="kit-cloth" cx="22" cy="39.5" r="7" />
    </>
  ),
  suspension: (
    <>
      <circle class="kit-strap" cx="36" cy="36" r="18" />
      <circle class="kit-strap" cx="36" cy="36" r="9" />
    </>
  ),
  tarp: <path class="kit-line" d="M6 55L36 8L66 55ZM36 8V55" />,
  under: (
    <>
      <rect class="kit-line" x="6" y="22" width="60" height="33" rx="4" />
      <path class="kit-line" d="M22 22V55M50 22V55M6 38.5H22M50 38.5H66" />
    </>
  ),
  over: (
    <>
      <path class="kit-line" d="M20 55Q12 55 12 46V26Q12 16 24 16H48Q60 16 60 26V46Q60 55 52 55Z" />
      <path class="kit-line" d="M12 30H60M28 16Q28 8 36 8Q44 8 44 16" />
    </>
  ),
  cord: (
    <>
      <path class="kit-line" d="M14 55V17M58 55V17M8 17H64M8 55H64" />
      <path class="kit-strap" d="M16 25H56M16 33H56M16 41H56M16 49H56" />
    </>
  ),
  peg: <path class="kit-line" d="M18 12V55M14 12H24M34 8V55M30 8H40M50 12V55M46 12H56" />,
  connector: <rect class="kit-line" x="24" y="8" width="24" height="46" rx="12" />,
  light: (
    <>
      <path class="kit-line" d="M28 28V55H44V28L50 14H22Z" />
      <path class="kit-line" d="M24 6L20 1M36 5V0M48 6L52 1" />
    </>
  ),
  other: <path class="kit-line" d="M12 22H60V55H12ZM12 32H60M32 22V38H40V22" />,
};
