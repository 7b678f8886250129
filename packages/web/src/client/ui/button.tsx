import type { ComponentChildren } from "preact";
import { once } from "./press.ts";

interface ButtonProps {
  readonly children: ComponentChildren;
  readonly onPress: () => void;
  readonly kind?: "action" | "plain";
  readonly size?: "spot" | "spot-second" | "wide";
  /** Why it cannot be pressed now; said beside it, and it stays in reach of the keyboard. */
  readonly offBecause?: string | undefined;
  readonly label?: string;
  readonly pressed?: boolean;
  readonly class?: string;
  /** For things pressed many times in a row: every press counts. */
  readonly quick?: boolean;
}

/** Something to press. It acts on release, once in 400 ms. */
export function Button(props: ButtonProps) {
  const off = props.offBecause !== undefined;
  const names = ["button"];
  if (props.kind !== undefined) names.push(`button-${props.kind}`);
  if (props.size !== undefined) names.push(`button-${props.size}`);
  if (props.class !== undefined) names.push(props.class);
  const act = (): void => {
    if (!off) props.onPress();
  };
  return (
    <button
      type="button"
      class={names.join(" ")}
      aria-disabled={off}
      aria-label={props.label}
      aria-pressed={props.pressed}
      title={props.offBecause}
      onClick={props.quick === true ? act : once(act)}
    >
      {props.children}
    </button>
  );
}
