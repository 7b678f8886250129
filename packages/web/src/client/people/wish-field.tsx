import type { SleeperDocument } from "@nightspan/edge";
import { useId } from "preact/hooks";
import { length } from "@nightspan/edge";
import { apartM } from "../state/berth-spot.ts";
import { opened } from "../state/camp-store.ts";
import { setField } from "../state/field-value.ts";
import { answer } from "../state/plan-store.ts";
import { Button } from "../ui/button.tsx";
import { FieldFrame } from "../ui/field-frame.tsx";
import { Name } from "../ui/name.tsx";
import { fill, WORDS } from "../words.ts";

interface WishFieldProps {
  readonly sleeper: SleeperDocument;
  readonly index: number;
  readonly kind: "near" | "apart";
}

/** Whom somebody wishes near or apart, each with how far they lie in this plan. */
export function WishField({ sleeper, index, kind }: WishFieldProps) {
  const id = useId();
  const wished = sleeper[kind] ?? [];
  const others = (opened.value?.document.sleepers ?? []).filter(
    (other) => other.id !== sleeper.id && !wished.includes(other.id),
  );
  const set = (ids: readonly string[]): void => {
    setField(["sleepers", index, kind], ids.length === 0 ? undefined : ids);
  };
  return (
    <FieldFrame
      id={id}
      label={WORDS.sleepers[kind]}
      below={
        wished.length === 0 ? null : (
          <ul class="wishes">
            {wished.map((other) => (
              <li key={other}>
                <Wished
                  sleeper={sleeper.id}
                  other={other}
                  onDrop={() => set(wished.filter((one) => one !== other))}
                />
              </li>
            ))}
          </ul>
        )
      }
    >
      <select
        id={id}
        class="input"
        value=""
        onChange={(event) => set([...wished, event.currentTarget.value])}
      >
        <option value="">{WORDS.sleepers.choose}</option>
        {others.map((other) => (
          <option key={other.id} value={other.id}>
            {other.name}
          </option>
        ))}
      </select>
    </FieldFrame>
  );
}

interface WishedProps {
  readonly sleeper: string;
  readonly other: string;
  readonly onDrop: () => void;
}

function Wished({ sleeper, other, onDrop }: WishedProps) {
  const now = answer.value;
  const name = opened.value?.camp.sleepers.find(({ id }) => id === other)?.name ?? other;
  const apart = now === undefined ? undefined : apartM(now.plan, now.camp, sleeper, other);
  return (
    <Button label={fill(WORDS.sleepers.dropWish, { name })} onPress={onDrop}>
      <Name>{name}</Name>
      {apart === undefined ? null : <span class="note soft">{length(apart, 0)}</span>}
      <span aria-hidden="true">×</span>
    </Button>
  );
}
