import { useEffect, useRef, useState } from 'preact/hooks';
import { badNumber, type Limits } from '../core/answer/bad-number.ts';
import { parseNumber } from '../core/answer/parse-number.ts';
import { isProblem, type Outcome, type Problem } from '../core/answer/problem.ts';
import type { Unit } from '../core/answer/quantity.ts';
import { NumberField, TextField } from './fields.tsx';
import { readLength, writeLength } from './length-text.ts';
import { LengthField } from './pad/length-field.tsx';
import { fromCelsius, parseDegrees } from './temperature.ts';
import { units } from './units.ts';

type Value = number | string | undefined;

interface Props<V extends Value> {
  label: string;
  value: V;
  hint?: string | undefined;
  /** What a number must be, and what it counts. */
  limits?: Limits;
  unit?: Unit;
  /** What else comes of this value: a problem when it can't be. */
  check?(value: NonNullable<V>): unknown;
  /** Called with each good value as it is typed: there is no Save. */
  onAccept(value: V): void;
}

/**
 * The text of an entry whose good values are accepted as they are typed. Other text stays where it is, with the reason;
 * a value that comes from elsewhere replaces the text.
 */
function useSettled<V extends Value>(
  { label, value, limits = {}, unit = 'mm', check, onAccept }: Props<V>,
  write: (value: V) => string,
  read: (text: string) => Outcome<V>,
) {
  const [text, setText] = useState(write(value));
  const [problem, setProblem] = useState<Problem>();
  const known = useRef(value);
  /** Accepted here and not come back from the store yet: typing is faster than storing. */
  const underWay = useRef<V[]>([]);
  useEffect(() => {
    if (value === known.current) return;
    known.current = value;
    const at = underWay.current.indexOf(value);
    underWay.current = at < 0 ? [] : underWay.current.slice(at + 1);
    if (at >= 0) return;
    setText(write(value));
    setProblem(undefined);
  }, [value, write]);
  return {
    value: text,
    problem,
    onInput(next: string) {
      setText(next);
      const got = read(next);
      const beyond = typeof got === 'number' ? badNumber('', label, got, unit, limits) : undefined;
      const outcome = beyond ?? (isProblem(got) || got === undefined ? got : check?.(got));
      setProblem(isProblem(outcome) ? outcome : undefined);
      if (isProblem(outcome) || isProblem(got)) return;
      if (got !== (underWay.current.at(-1) ?? known.current)) underWay.current.push(got);
      onAccept(got);
    },
  };
}

/** An entry whose good values are kept as they are typed. In other units the same value reads otherwise: it starts afresh. */
function settled<V extends Value>(
  Field: typeof LengthField | typeof NumberField | typeof TextField,
  write: (value: V) => string,
  read: (text: string) => Outcome<V>,
) {
  const Entry = (props: Props<V>) => (
    <Field label={props.label} hint={props.hint} {...useSettled(props, write, read)} />
  );
  return (props: Props<V>) => <Entry key={`${units.value.unit}/${units.value.nearest}`} {...props} />;
}

const writeNumber = (value: number) => String(Math.round(value * 1e6) / 1e6);

const orNothing = (write: (value: number) => string) => (value: number | undefined) =>
  value === undefined ? '' : write(value);
const orEmpty = (read: (text: string) => Outcome<number>) => (text: string) =>
  text.trim() === '' ? undefined : read(text);

/** Words, without the room around them. */
export const SettledText = settled(
  TextField,
  (text: string) => text,
  (text) => text.trim(),
);
export const SettledLength = settled(LengthField, writeLength, readLength);
export const SettledNumber = settled(NumberField, writeNumber, parseNumber);
/** A temperature in degrees Celsius, typed in the maker's own degrees; no pad of digits alone, since it may lie below 0. */
export const SettledTemperature = settled(
  TextField,
  (celsius: number) => writeNumber(Math.round(fromCelsius(celsius) * 1000) / 1000),
  parseDegrees,
);
/** A length that may be left out. */
export const OptionalLength = settled(LengthField, orNothing(writeLength), orEmpty(readLength));
/** A number that may be left out. */
export const OptionalNumber = settled(NumberField, orNothing(writeNumber), orEmpty(parseNumber));
