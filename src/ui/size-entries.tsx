import { SettledLength } from './settled.tsx';

interface Props<T> {
  of: T;
  /** By name; a size that the record doesn't have gets no entry. */
  labels: Readonly<Record<string, string>>;
  /** What comes of the sizes with one changed. */
  check(next: T): unknown;
  onChange(part: Partial<T>): void;
}

/** The sizes of a record, mm, each kept as it is typed. */
export function SizeEntries<T extends object>({ of, labels, check, onChange }: Props<T>) {
  const sizes = new Map<string, unknown>(Object.entries(of));
  return (
    <div class="fields">
      {Object.entries(labels).flatMap(([name, label]) => {
        const value = sizes.get(name);
        if (typeof value !== 'number') return [];
        const changed = (size: number) => ({ [name]: size }) as Partial<T>;
        return [
          <SettledLength
            key={name}
            label={label}
            value={value}
            limits={{ least: 0 }}
            check={(size) => check({ ...of, ...changed(size) })}
            onAccept={(size) => onChange(changed(size))}
          />,
        ];
      })}
    </div>
  );
}
