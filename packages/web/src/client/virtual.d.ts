declare module "virtual:nightspan-example" {
  /** The demo camp of `examples/`, as text. */
  export const exampleCamp: string;
}

declare module "virtual:nightspan-tokens.css";
