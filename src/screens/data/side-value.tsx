import { Length } from '../../ui/length.tsx';

/** Last words of properties that are lengths in mm wherever they stand in a record. */
const lengths =
  /\b(width|length|breadth|thickness|depth|mm|kerf|opening|min|max|edge|face|cup|bow|crook|twist|start|offset|inset|shank|head|margin|hold|slot|swing|distance|front|right|back|left|diagonal(AC|BD)|difference|precision|value)$/;

/** One side's value of a property, as the maker would read it. Always shown as text, whatever a file holds. */
export function SideValue({ name, value }: { name: string; value: unknown }) {
  if (value === undefined || value === null || value === '') return <>nothing</>;
  if (typeof value === 'number') {
    if (lengths.test(name)) return <Length mm={value} />;
    if (/\bat$/.test(name)) return <>{new Date(value).toLocaleString()}</>;
    return <>{Number(value.toPrecision(6))}</>;
  }
  if (typeof value === 'boolean') return <>{value ? 'yes' : 'no'}</>;
  if (Array.isArray(value)) return <>{value.length} entries</>;
  if (typeof value === 'object') return <>{'name' in value ? String(value.name) : 'there'}</>;
  return <>{String(value).slice(0, 200)}</>;
}
