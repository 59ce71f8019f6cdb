import { useMemo, useRef } from 'preact/hooks';
import { units } from '../units.ts';
import './length-pad.css';
import { pressKey } from './press-key.ts';

/** What the keys say, row by row. */
const inchKeys = (nearest: number) =>
  `1 2 3 1/8 1/4 ⌫ 4 5 6 3/8 1/2 ft 7 8 9 5/8 3/4 mm . 0 7/8 −1/${nearest} +1/${nearest} abc ▾`.split(' ');
const millimetreKeys = '1 2 3 mm cm ⌫ 4 5 6 m in ft 7 8 9 −1 +1 abc ▾ . 0'.split(' ');

/** How a key is called where its sign alone doesn't say it. */
const spoken: Readonly<Record<string, string>> = {
  '⌫': 'Delete last',
  ft: 'ft, feet',
  in: 'in, inches',
  abc: 'Type on the keyboard',
  '▾': 'Put the pad away',
};

interface Props {
  value: string;
  onInput(text: string): void;
  onKeyboard(): void;
  onAway(): void;
  onNext(): void;
  nextLabel: string;
}

/** The app's own keys for a length. Typing on a keyboard works as well, so the keys stay out of the tab order. */
export function LengthPad(props: Props) {
  const latest = useRef(props);
  latest.current = props;
  const { nextLabel } = props;
  const now = units.value;
  // Drawn once: what is typed changes the entry, never the pad.
  return useMemo(() => {
    const inches = now.unit === 'in';
    const press = (label: string) => {
      const { value, onInput, onKeyboard, onAway } = latest.current;
      if (label === 'abc') onKeyboard();
      else if (label === '▾') onAway();
      else onInput(pressKey(value, label, now));
    };
    return (
      <section class="pad" aria-label="Length pad" onPointerDown={keepFocus} onMouseDown={keepFocus}>
        <div>
          {(inches ? inchKeys(now.nearest) : millimetreKeys).map((label) => (
            <button
              type="button"
              tabIndex={-1}
              class={/^[\d.]$/.test(label) ? undefined : 'side'}
              aria-label={spoken[label] ?? label.replace('−', 'less ').replace('+', 'plus ')}
              onClick={() => press(label)}
            >
              {label}
            </button>
          ))}
          <button
            type="button"
            tabIndex={-1}
            class={inches ? 'next' : 'next narrow'}
            onClick={() => latest.current.onNext()}
          >
            {nextLabel}
          </button>
        </div>
      </section>
    );
  }, [now, nextLabel]);
}

/** A press must not take the focus from the entry that the pad writes into. */
const keepFocus = (event: Event) => event.preventDefault();
