import { badNumber } from '../../core/answer/bad-number.ts';
import { parseNumber } from '../../core/answer/parse-number.ts';
import { parseRange } from '../../core/answer/parse-range.ts';
import { parseSpreadingRate } from '../../core/answer/parse-spreading-rate.ts';
import { parseVolume } from '../../core/answer/parse-volume.ts';
import { isProblem, type Problem } from '../../core/answer/problem.ts';
import { type Range, range, scaled } from '../../core/answer/range.ts';
import { m2PerSquareFoot, micrometresPerMil } from '../../core/answer/us-units.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { airFactor } from '../../core/finishing/air-factor.ts';
import { type Container, chooseContainers } from '../../core/finishing/choose-containers.ts';
import { filmCoverage } from '../../core/finishing/film-coverage.ts';
import type { Finish } from '../../core/finishing/finish.ts';
import { type FinishMethod, mostCoats } from '../../core/finishing/finish-amount.ts';
import { type FinishLabel, withFinishLabel } from '../../core/finishing/finish-label.ts';
import { type FinishShape, partsArea } from '../../core/finishing/part-area.ts';
import type { Air } from '../../core/moisture/equilibrium-moisture.ts';
import { finishById, finishes } from '../../tables/finishes.ts';
import { formReader } from '../../ui/form-reader.ts';
import { parseDegrees } from '../../ui/temperature.ts';
import { units } from '../../ui/units.ts';
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
  readonly wood: FinishForm['wood'];
  /** Litres of it on the shelf. */
  readonly onShelf: number;
  readonly containers: readonly Container[];
  readonly shapes: readonly FinishShape[];
  readonly air: Air;
  /** By what today's air makes each wait longer. */
  readonly airFactor: Worked;
  readonly firstGrit: number;
  readonly sections: readonly string[];
  /** Undefined for a finish of one part. */
  readonly mix: ReadMix | undefined;
  readonly problems: ReadonlyMap<string, Problem>;
}

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

/** Reads what was typed, in the maker's units; `air` stands where none is typed. What can't be read counts as not typed. */
export function readFinishForm(form: FinishForm, air = usualAir): ReadFinish {
  const reader = formReader();
  const { problems, read, typed, number, found } = reader;
  const inches = units.value.unit === 'in';
  const volume = (text: string) => parseVolume(text, inches ? 'qt' : 'l');
  const coatsOf = (entry: string, text: string, least: number) => {
    const coats = number(entry, text);
    return read(
      entry,
      badNumber('', 'The number of coats', coats, 'count', { least, most: mostCoats, whole: true }) ?? coats,
    );
  };

  const kind = kindOf(form);
  const fromCan = (entry: string, field: keyof FinishLabel, said: Range | undefined): FinishLabel | undefined =>
    said && read(entry, withFinishLabel(kind, { [field]: said })) && { [field]: said };
  const time = (entry: 'wait' | 'wipeOff' | 'use' | 'cure', field: keyof FinishLabel, size: number) => {
    const said = kind[field] && typed(entry, form[entry], parseRange);
    return fromCan(entry, field, said && scaled(said, size));
  };
  const micrometres = (text: string) => {
    const film = parseNumber(text);
    return isProblem(film) || !inches ? film : film * micrometresPerMil;
  };
  const filmRate = isEmpty(form.solids + form.film)
    ? undefined
    : found(filmCoverage(number('solids', form.solids), number('film', form.film, micrometres)));
  const rate = typed('rate', form.rate, (text) => parseSpreadingRate(text, inches ? 'ft2PerGallon' : 'm2PerLitre'));
  const label = {
    ...fromCan('film', 'coverage', filmRate && range(filmRate.value)),
    ...fromCan('rate', 'coverage', rate),
    ...time('wait', 'waitSeconds', 3600),
    ...time('wipeOff', 'wipeOffSeconds', 60),
    ...time('use', 'useAfterSeconds', 86400),
    ...time('cure', 'cureSeconds', 86400),
  };

  const coats = coatsOf('coats', coatsText(form), 1) ?? 0;
  const insideCoats =
    (form.insideCoats === undefined ? undefined : coatsOf('insideCoats', form.insideCoats, 0)) ?? coats;

  const containers = form.containers.flatMap(({ size, price }, at) => {
    if (isEmpty(size + price)) return [];
    const entry = `containers.${at}`;
    const one = { litres: number(`${entry}.litres`, size, volume), price: number(`${entry}.price`, price) };
    return found(chooseContainers(0, [one]), inRow(at)) ? [one] : [];
  });
  const shapes = form.shapes.flatMap(({ name, area, count, treatment }, at) => {
    if (isEmpty(name + area)) return [];
    const entry = `shapes.${at}`;
    const sized = number(`${entry}.areaM2`, area);
    const one = {
      name: name.trim() || `Shape ${at + 1}`,
      areaM2: inches ? sized * m2PerSquareFoot : sized,
      count: number(`${entry}.count`, count),
      treatment,
    };
    return found(partsArea([], [{ ...one, treatment: 'shown' }]), inRow(at)) ? [one] : [];
  });

  const today = {
    celsius: typed('celsius', form.celsius, parseDegrees) ?? air.celsius,
    humidity: typed('humidity', form.humidity, parseNumber) ?? air.humidity,
  };

  return {
    finish: read('cure', withFinishLabel(kind, label)) ?? kind,
    label,
    filmRate,
    coats,
    insideCoats: Math.min(insideCoats, coats),
    method: methodOf(form),
    wood: form.wood,
    onShelf: typed('onShelf', form.onShelf, volume) ?? 0,
    containers,
    shapes,
    air: today,
    airFactor: found(airFactor(today.celsius, today.humidity)) ?? (airFactor(20, 50) as Worked),
    firstGrit: Number(gritText(form)),
    sections: form.sections
      .split(/[,;]/)
      .map((section) => section.trim())
      .filter(Boolean),
    mix: form.mix.on ? readMix(form.mix, reader) : undefined,
    problems,
  };
}

const isEmpty = (text: string) => text.trim() === '';

/** The core was asked about one row alone: its entry has the row's own place. */
const inRow = (at: number) => (field: string) => field.replace('0', String(at));
