import { useId, useState } from 'preact/hooks';

interface One {
  readonly id: string;
  readonly name: string;
  /** What it is, shown under the list while it is picked. */
  readonly means: string;
  readonly group?: string;
}

interface Props {
  readonly label: string;
  readonly all: readonly One[];
  readonly full: boolean;
  readonly onPick: (id: string) => void;
}

function Options({ all }: { all: readonly One[] }) {
  return (
    <>
      {all.map(({ id, name }) => (
        <option key={id} value={id}>
          {name}
        </option>
      ))}
    </>
  );
}

/** A list to pick one from, what it is, and a button that puts it beside A. */
export function PickOne({ label, all, full, onPick }: Props) {
  const id = useId();
  const [chosen, setChosen] = useState<string>();
  const picked = all.find((each) => each.id === chosen) ?? all[0];
  const groups = [...new Set(all.flatMap(({ group }) => group ?? []))];
  if (!picked) return null;
  return (
    <div class="compare-way">
      <label for={id}>{label}</label>
      <select
        id={id}
        value={picked.id}
        aria-describedby={`${id}-means`}
        onChange={(event) => setChosen(event.currentTarget.value)}
      >
        {groups.length > 1 ? (
          groups.map((group) => (
            <optgroup key={group} label={group}>
              <Options all={all.filter((each) => each.group === group)} />
            </optgroup>
          ))
        ) : (
          <Options all={all} />
        )}
      </select>
      <p class="small quiet" id={`${id}-means`}>
        {picked.means}
      </p>
      <button type="button" class="button small" disabled={full} onClick={() => onPick(picked.id)}>
        Put it beside A<span class="visually-hidden">: {picked.name}</span>
      </button>
    </div>
  );
}
