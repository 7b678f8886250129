interface NameProps {
  readonly children: string;
}

const OUTSIDE_LATIN = /[^\p{Script=Latin}\p{Script=Common}\p{Script=Inherited}]/u;

/** A name or tag as it is written: its own direction, and one face for the whole of it. */
export function Name({ children }: NameProps) {
  return (
    <bdi dir="auto" class={OUTSIDE_LATIN.test(children) ? "name name-other" : "name"}>
      {children}
    </bdi>
  );
}
