import { Button } from "./button.tsx";

interface HalfStepperProps {
  readonly title: string;
  readonly shown: string;
  readonly unit: string;
  readonly note?: string;
  readonly less: string;
  readonly more: string;
  readonly onLess: () => void;
  readonly onMore: () => void;
}

/** One number, as large as it goes, with a button below to either side. */
export function HalfStepper(props: HalfStepperProps) {
  return (
    <>
      <h2 class="spot-say">{props.title}</h2>
      <output class="spot-number" aria-live="polite">
        <span class="shout">{props.shown}</span> <span class="say">{props.unit}</span>
      </output>
      {props.note === undefined ? null : <p class="soft">{props.note}</p>}
      <div class="spot-pair">
        <Button quick size="spot" label={props.less} onPress={props.onLess}>
          <PlusMinus plus={false} />
        </Button>
        <Button quick size="spot" label={props.more} onPress={props.onMore}>
          <PlusMinus plus />
        </Button>
      </div>
    </>
  );
}

function PlusMinus({ plus }: { readonly plus: boolean }) {
  return (
    <svg viewBox="0 0 32 32" width="36" height="36" aria-hidden="true">
      <path d={plus ? "M4 16H28M16 4V28" : "M4 16H28"} fill="none" stroke="currentColor" stroke-width="4" />
    </svg>
  );
}
