import { badNumber, type Limits } from '../../core/answer/bad-number.ts';
import { parseNumber } from '../../core/answer/parse-number.ts';
import { parseRange } from '../../core/answer/parse-range.ts';
import { parseSpreadingRate } from '../../core/answer/parse-spreading-rate.ts';
import { parseVolume } from '../../core/answer/parse-volume.ts';
import { isProblem, type Outcome, type Problem } from '../../core/answer/problem.ts';
import type { Unit } from '../../core/answer/quantity.ts';
import { type Range, range, scaled } from '../../core/answer/range.ts';
import { m2PerSquareFoot, micrometresPerMil } from '../../core/answer/us-units.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { airFactor } from '../../core/finishing/air-factor.ts';
import type { Container } from '../../core/finishing/choose-containers.ts';
import { filmCoverage } from '../../core/finishing/film-coverage.ts';
import type { Finish } from '../../core/finishing/finish.ts';
import { type FinishMethod, mostCoats } from '../../core/finishing/finish-amount.ts';
import { type FinishLabel, withFinishLabel } from '../../core/finishing/finish-label.ts';
import type { FinishShape } from '../../core/finishing/part-area.ts';
import type { Air } from '../../core/moisture/equilibrium-moisture.ts';
import { finishById, finishes } from '../../tables/finishes.ts';
import type { FinishForm } from './finish-form.ts';
import { type ReadMix, readMix } from './read-mix.ts';

/** A form as read: what could be read, and by entry what could not. */
export interface ReadFinish {
  /** The kind with the can's own figures in place of the table's. */
  readonly finish: Finish;
  /** What was typed in from the can. */
  readonly label: FinishLabel;
  /** The rate that follows from solids and film; it counts where the can gives none. */
  readonly filmRate: Worked | undefined;
  readonly coats: number;
  /** 0 leaves the insides bare. */
  readonly insideCoats: number;
  readonly method: FinishMethod;
  /** Litres of it on the shelf. */
  readonly onShelf: number;
  readonly containers: readonly Container[];
  readonly shapes: readonly FinishShape[];
  readonly air: Air;
  /** By what today's air makes each wait longer. */
  readonly airFactor: number;
  readonly firstGrit: number;
  readonly sections: readonly string[];
  readonly mix: ReadMix;
  readonly problems: ReadonlyMap<string, Problem>;
}

const isEmpty = (text: string) => text.trim() === '';

export const kindOf = (form: FinishForm): Finish => finishById(form.kind) ?? (finishes[0] as Finish);

export const coatsText = (form: FinishForm): string => form.coats ?? String(kindOf(form).coats.least);
export const insideCoatsText = (form: FinishForm): string => form.insideCoats ?? coatsText(form);

export const methodOf = (form: FinishForm): FinishMethod =>
  form.method ?? (kindOf(form).wipeOffSeconds ? 'rag' : 'brush');

/** Never finer than the kind asks for: the choice may have been made for another kind. */
export const gritText = (form: FinishForm): string =>
  String(Math.min(Number(form.firstGrit ?? 120), kindOf(form).bareGrit));

/** The air where nobody has read it. */
const usualAir: Air = { celsius: 20, humidity: 50 };

/**
 * Reads what was typed; `unit` says whose units a bare number is in, `air` what stands where none is typed. What can't be
 * read counts as not typed.
 */
export function readFinishForm(form: FinishForm, unit: 'in' | 'mm', air = usualAir): ReadFinish {
  const problems = new Map<string, Problem>();
  const read = <T>(entry: string, value: Outcome<T>, instead: T, check?: (value: T) => Problem | undefined): T => {
    const trouble = isProblem(value) ? value : check?.(value);
    if (!trouble) return value as T;
    problems.set(entry, trouble);
    return instead;
  };
  const typed = (entry: string, text: string, instead: number) =>
    isEmpty(text) ? instead : read(entry, parseNumber(text), instead);
  const needed = (entry: string, text: string, instead: number, name: string, of: Unit, limits: Limits) =>
    read(entry, parseNumber(text), instead, (value) => badNumber('', name, value, of, limits));
  const volume = (text: string) => parseVolume(text, unit === 'in' ? 'qt' : 'l');
  const coats = (least: number) => ({ least, most: mostCoats, whole: true });

  const kind = kindOf(form);
  const label: { -readonly [name in keyof FinishLabel]: FinishLabel[name] } = {};
  const fromCan = (entry: string, field: keyof FinishLabel, found: Outcome<Range>) => {
    const value = read<Range | undefined>(entry, found, undefined, (value) => {
      const checked = withFinishLabel(kind, { [field]: value });
      return isProblem(checked) ? checked : undefined;
    });
    if (value) Object.assign(label, { [field]: value });
  };
  if (!isEmpty(form.rate))
    fromCan('rate', 'coverage', parseSpreadingRate(form.rate, unit === 'in' ? 'ft2PerGallon' : 'm2PerLitre'));
  const filmRate = isEmpty(form.solids) && isEmpty(form.film) ? undefined : readFilm(form, unit, read);
  if (filmRate && isEmpty(form.rate)) fromCan('film', 'coverage', range(filmRate.value));
  for (const [entry, field, size] of [
    ['wait', 'waitSeconds', 3600],
    ['wipeOff', 'wipeOffSeconds', 60],
    ['use', 'useAfterSeconds', 86400],
    ['cure', 'cureSeconds', 86400],
  ] as const) {
    if (isEmpty(form[entry]) || !kind[field]) continue;
    const said = parseRange(form[entry]);
    fromCan(entry, field, isProblem(said) ? said : scaled(said, size));
  }
  const finish = read('cure', withFinishLabel(kind, label), kind);

  const outside = needed('coats', coatsText(form), 0, 'The number of coats', 'count', coats(1));
  const inside =
    form.insideCoats === undefined
      ? outside
      : needed('insideCoats', form.insideCoats, outside, 'The number of coats', 'count', coats(0));

  const containers: Container[] = [];
  for (const [at, { size, price }] of form.containers.entries()) {
    if (isEmpty(size) && isEmpty(price)) continue;
    const litres = read(`container.${at}`, volume(size), 0, (value) =>
      badNumber('', 'The container', value, 'litres', { least: 0.001, most: 200 }),
    );
    const cost = needed(`price.${at}`, price, 0, 'The price', 'money', { above: 0, most: 1e5 });
    if (litres > 0 && cost > 0) containers.push({ litres, price: cost });
  }

  const shapes: FinishShape[] = [];
  for (const [at, { name, area, count, treatment }] of form.shapes.entries()) {
    if (isEmpty(name) && isEmpty(area)) continue;
    const limits = { above: 0, most: 1000 };
    const sized = needed(`shape.${at}`, area, 0, 'The area', 'm2', limits);
    const many = needed(`shapeCount.${at}`, count, 0, 'How many', 'count', { least: 1, most: 1000, whole: true });
    const areaM2 = unit === 'in' ? sized * m2PerSquareFoot : sized;
    if (areaM2 > 0 && many > 0) shapes.push({ name: name.trim() || `Shape ${at + 1}`, areaM2, count: many, treatment });
  }

  const degrees = typed('celsius', form.celsius, unit === 'in' ? air.celsius * 1.8 + 32 : air.celsius);
  const celsius = unit === 'in' ? (degrees - 32) / 1.8 : degrees;
  const humidity = typed('humidity', form.humidity, air.humidity);
  const slower = airFactor(celsius, humidity);
  if (isProblem(slower)) problems.set(slower.field, slower);

  const mix = readMix(form.mix, unit);
  if (form.mix.on) for (const [entry, trouble] of mix.problems) problems.set(`mix.${entry}`, trouble);

  return {
    finish,
    label,
    filmRate,
    coats: outside,
    insideCoats: Math.min(inside, outside),
    method: methodOf(form),
    onShelf: isEmpty(form.onShelf)
      ? 0
      : read('onShelf', volume(form.onShelf), 0, (value) =>
          badNumber('', 'What is on the shelf', value, 'litres', { least: 0, most: 200 }),
        ),
    containers,
    shapes,
    air: { celsius, humidity },
    airFactor: isProblem(slower) ? 1 : slower,
    firstGrit: Number(gritText(form)),
    sections: form.sections
      .split(/[,;]/)
      .map((section) => section.trim())
      .filter(Boolean),
    mix,
    problems,
  };
}

type Read = <T>(entry: string, value: Outcome<T>, instead: T) => T;

/** The film is typed in mils by makers who read inches, in micrometres by others. */
function readFilm(form: FinishForm, unit: 'in' | 'mm', read: Read): Worked | undefined {
  const solids = read<number | undefined>('solids', parseNumber(form.solids), undefined);
  const film = read<number | undefined>('film', parseNumber(form.film), undefined);
  if (solids === undefined || film === undefined) return undefined;
  const found = filmCoverage(solids, unit === 'in' ? film * micrometresPerMil : film);
  return read<Worked | undefined>(
    isProblem(found) && found.field === 'solidsPercent' ? 'solids' : 'film',
    found,
    undefined,
  );
}
