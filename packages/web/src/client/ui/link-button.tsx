import type { ComponentChildren } from "preact";
import { hrefOf, type Route } from "../state/route.ts";

interface LinkProps {
  readonly to: Route;
  readonly children: ComponentChildren;
  readonly kind?: "action" | "plain";
  readonly size?: "spot" | "spot-second" | "wide";
  readonly current?: boolean;
  readonly label?: string;
  readonly class?: string;
}

/** A link that looks like something to press. */
export function LinkButton({ to, children, kind, size, current, label, class: own }: LinkProps) {
  const names = ["button"];
  if (kind !== undefined) names.push(`button-${kind}`);
  if (size !== undefined) names.push(`button-${size}`);
  if (own !== undefined) names.push(own);
  return (
    <a
      href={hrefOf(to)}
      class={names.join(" ")}
      aria-current={current === true ? "page" : undefined}
      aria-label={label}
    >
      {children}
    </a>
  );
}
