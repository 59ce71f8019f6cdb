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

function inchKeys(nearest: number): Key[] {
  const finest = 25.4 / nearest;
  return [
    ...[text('1'), text('2'), text('3'), fraction('1/8'), fraction('1/4')],
    ...[text('4'), text('5'), text('6'), fraction('3/8'), fraction('1/2')],
    ...[text('7'), text('8'), text('9'), fraction('5/8'), fraction('3/4')],
    ...[text('.'), text('0'), back, fraction('7/8'), unit('ft', "'", 'feet')],
    { label: `−1/${nearest}`, say: `less 1/${nearest}`, key: { type: 'nudge', mm: -finest }, side: true },
    { label: `+1/${nearest}`, say: `plus 1/${nearest}`, key: { type: 'nudge', mm: finest }, side: true },
  ];
}

const millimetreKeys: Key[] = [
  ...[text('1'), text('2'), text('3'), back, unit('in', 'in', 'inches')],
  ...[text('4'), text('5'), text('6'), unit('mm'), unit('cm')],
  ...[text('7'), text('8'), text('9'), unit('m')],
  { label: '+1', say: 'plus 1', key: { type: 'nudge', mm: 1 }, side: true },
  ...[text('.'), text('0')],
  { label: '−1', say: 'less 1', key: { type: 'nudge', mm: -1 }, side: true },
];

interface Props {
  value: string;
  onInput(text: string): void;
  onKeyboard(): void;
  onNext(): void;
  nextLabel: string;
}

/** The app's own keys for a length. Typing on a keyboard works as well, so the keys stay out of the tab order. */
export function LengthPad({ value, onInput, onKeyboard, onNext, nextLabel }: Props) {
  const keys = units.value.unit === 'in' ? inchKeys(units.value.nearest) : millimetreKeys;
  // A press must not take the focus from the entry that the pad writes into.
  const keepFocus = (event: Event) => event.preventDefault();
  return (
    <section class="pad" aria-label="Length pad" onPointerDown={keepFocus} onMouseDown={keepFocus}>
      <div>
        {keys.map(({ label, say, key, side }) => (
          <button
            type="button"
            tabIndex={-1}
            class={side ? 'side' : undefined}
            aria-label={say ?? label}
            onClick={() => onInput(pressKey(value, key, units.value))}
          >
            {label}
          </button>
        ))}
        <button type="button" tabIndex={-1} class="side" aria-label="Type on the keyboard" onClick={onKeyboard}>
          abc
        </button>
        <button type="button" tabIndex={-1} class="next" onClick={onNext}>
          {nextLabel}
        </button>
      </div>
    </section>
  );
}
