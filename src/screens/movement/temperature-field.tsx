import { badNumber } from '../../core/answer/bad-number.ts';
import { SettledNumber } from '../../ui/settled.tsx';
import { units } from '../../ui/units.ts';

interface Props {
  label: string;
  celsius: number;
  onAccept(celsius: number): void;
}

/** A room's temperature on the maker's own scale. */
export function TemperatureField({ label, celsius, onAccept }: Props) {
  const fahrenheit = units.value.unit === 'in';
  const toCelsius = (value: number) => (fahrenheit ? (value - 32) / 1.8 : value);
  return (
    <SettledNumber
      key={String(fahrenheit)}
      label={label}
      hint={fahrenheit ? '°F' : '°C'}
      value={fahrenheit ? Math.round((celsius * 1.8 + 32) * 10) / 10 : celsius}
      check={(value) => badNumber('', 'The temperature', toCelsius(value), 'celsius', { least: -30, most: 50 })}
      onAccept={(value) => onAccept(toCelsius(value))}
    />
  );
}
