import type { ComponentChildren } from "preact";

/** One figure in ruled lines: what it is, and how much. */
export function Figure({ name, children }: { readonly name: string; readonly children: ComponentChildren }) {
  return (
    <div class="figure">
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}
