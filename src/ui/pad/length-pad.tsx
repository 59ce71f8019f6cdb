import { units } from '../units.ts';
import './length-pad.css';
import { type PadKey, pressKey } from './press-key.ts';

interface Key {
  readonly label: string;
  readonly say?: string;
  readonly key: PadKey;
  readonly side?: boolean;
}

const text = (label: string): Key => ({ label, key: { type: 'text', text: label } });
const fraction = (label: string): Key => ({ label, key: { type: 'fraction', text: label }, side: true });
const unit = (label: string, written = label, say = label): Key => ({
  label,
  say,
  key: { type: 'unit', text: written },
  side: true,
});
const back: Key = { label: '⌫', say: 'Delete last', key: { type: 'back' }, side: true };

const nudge = (label: string, say: string, mm: number): Key => ({ label, say, key: { type: 'nudge', mm }, side: true });

const inchKeys = (nearest: number): Key[] => [
  ...[text('1'), text('2'), text('3'), fraction('1/8'), fraction('1/4'), back],
  ...[text('4'), text('5'), text('6'), fraction('3/8'), fraction('1/2'), unit('ft', "'", 'ft, feet')],
  ...[text('7'), text('8'), text('9'), fraction('5/8'), fraction('3/4'), unit('mm')],
  ...[text('.'), text('0'), fraction('7/8')],
  nudge(`−1/${nearest}`, `less 1/${nearest}`, -25.4 / nearest),
  nudge(`+1/${nearest}`, `plus 1/${nearest}`, 25.4 / nearest),
];

const millimetreKeys: Key[] = [
  ...[text('1'), text('2'), text('3'), unit('mm'), unit('cm'), back],
  ...[text('4'), text('5'), text('6'), unit('m'), unit('in', 'in', 'in, inches'), unit('ft', "'", 'ft, feet')],
  ...[text('7'), text('8'), text('9'), nudge('−1', 'less 1', -1), nudge('+1', 'plus 1', 1)],
];

interface Props {
  value: string;
  onInput(text: string): void;
  onKeyboard(): void;
  onAway(): void;
  onNext(): void;
  nextLabel: string;
}

/** The app's own keys for a length. Typing on a keyboard works as well, so the keys stay out of the tab order. */
export function LengthPad({ value, onInput, onKeyboard, onAway, onNext, nextLabel }: Props) {
  const inches = units.value.unit === 'in';
  const keys = inches ? inchKeys(units.value.nearest) : millimetreKeys;
  const lastRow = inches ? [] : [text('.'), text('0')];
  const press = ({ key }: Key) => onInput(pressKey(value, key, units.value));
  // A press must not take the focus from the entry that the pad writes into.
  const keepFocus = (event: Event) => event.preventDefault();
  return (
    <section class="pad" aria-label="Length pad" onPointerDown={keepFocus} onMouseDown={keepFocus}>
      <div>
        {keys.map((key) => (
          <PadButton of={key} onPress={press} />
        ))}
        <button type="button" tabIndex={-1} class="side" aria-label="Type on the keyboard" onClick={onKeyboard}>
          abc
        </button>
        <button type="button" tabIndex={-1} class="side" aria-label="Put the pad away" onClick={onAway}>
          ▾
        </button>
        {lastRow.map((key) => (
          <PadButton of={key} onPress={press} />
        ))}
        <button type="button" tabIndex={-1} class={inches ? 'next' : 'next narrow'} onClick={onNext}>
          {nextLabel}
        </button>
      </div>
    </section>
  );
}

function PadButton({ of, onPress }: { of: Key; onPress(key: Key): void }) {
  return (
    <button
      type="button"
      tabIndex={-1}
      class={of.side ? 'side' : undefined}
      aria-label={of.say ?? of.label}
      onClick={() => onPress(of)}
    >
      {of.label}
    </button>
  );
}
