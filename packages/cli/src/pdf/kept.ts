/** A function that works out each answer once. */
export function kept<T>(answer: (text: string) => T): (text: string) => T {
  const known = new Map<string, T>();
  return (text) => {
    const found = known.get(text);
    if (found !== undefined) return found;
    const made = answer(text);
    known.set(text, made);
    return made;
  };
}
