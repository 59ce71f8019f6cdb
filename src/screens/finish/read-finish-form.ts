import { badNumber } from '../../core/answer/bad-number.ts';
import { checked } from '../../core/answer/checked.ts';
import { parseNumber } from '../../core/answer/parse-number.ts';
import { parseRange } from '../../core/answer/parse-range.ts';
import { parseSpreadingRate } from '../../core/answer/parse-spreading-rate.ts';
import { parseVolume } from '../../core/answer/parse-volume.ts';
import { isProblem, type Outcome, type Problem } from '../../core/answer/problem.ts';
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
import { formReader, isEmpty } from './form-reader.ts';
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
  const reader = formReader();
  const { problems, read, found, number } = reader;
  const inches = unit === 'in';
  const volume = (entry: string, text: string, name: string, least: number) =>
    read(
      entry,
      checked(parseVolume(text, inches ? 'qt' : 'l'), (value) =>
        badNumber('', name, value, 'litres', { least, most: 200 }),
      ),
    );
  const coatsOf = (entry: string, text: string, least: number) =>
    number(entry, text, 'The number of coats', 'count', { least, most: mostCoats, whole: true });

  const kind = kindOf(form);
  const filmRate = isEmpty(form.solids) && isEmpty(form.film) ? undefined : readFilm(form, inches, reader);
  let label: FinishLabel = {};
  const fromCan = (entry: string, field: keyof FinishLabel, found: Outcome<Range>) => {
    const value = read(
      entry,
      checked(found, (said) => problemIn(withFinishLabel(kind, { [field]: said }))),
    );
    if (value) label = { ...label, [field]: value };
  };
  if (!isEmpty(form.rate))
    fromCan('rate', 'coverage', parseSpreadingRate(form.rate, inches ? 'ft2PerGallon' : 'm2PerLitre'));
  else if (filmRate) fromCan('film', 'coverage', range(filmRate.value));
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

  const coats = coatsOf('coats', coatsText(form), 1) ?? 0;
  const insideCoats =
    (form.insideCoats === undefined ? undefined : coatsOf('insideCoats', form.insideCoats, 0)) ?? coats;

  const containers = form.containers.flatMap(({ size, price }, at): Container | [] => {
    if (isEmpty(size) && isEmpty(price)) return [];
    const litres = volume(`container.${at}`, size, 'The container', 0.001);
    const cost = number(`price.${at}`, price, 'The price', 'money', { above: 0, most: 1e5 });
    return litres && cost ? { litres, price: cost } : [];
  });

  const shapes = form.shapes.flatMap(({ name, area, count, treatment }, at): FinishShape | [] => {
    if (isEmpty(name) && isEmpty(area)) return [];
    const sized = number(`shape.${at}`, area, 'The area', 'm2', { above: 0, most: 1000 });
    const many = number(`shapeCount.${at}`, count, 'How many', 'count', { least: 1, most: 1000, whole: true });
    if (!sized || !many) return [];
    const areaM2 = inches ? sized * m2PerSquareFoot : sized;
    return { name: name.trim() || `Shape ${at + 1}`, areaM2, count: many, treatment };
  });

  const degrees = isEmpty(form.celsius) ? undefined : read('celsius', parseNumber(form.celsius));
  const celsius = degrees === undefined ? air.celsius : inches ? (degrees - 32) / 1.8 : degrees;
  const humidity = (isEmpty(form.humidity) ? undefined : read('humidity', parseNumber(form.humidity))) ?? air.humidity;

  const mix = readMix(form.mix, unit);
  if (form.mix.on) for (const [entry, trouble] of mix.problems) problems.set(`mix.${entry}`, trouble);

  return {
    finish: read('cure', withFinishLabel(kind, label)) ?? kind,
    label,
    filmRate,
    coats,
    insideCoats: Math.min(insideCoats, coats),
    method: methodOf(form),
    onShelf: (isEmpty(form.onShelf) ? undefined : volume('onShelf', form.onShelf, 'What is on the shelf', 0)) ?? 0,
    containers,
    shapes,
    air: { celsius, humidity },
    airFactor: found(airFactor(celsius, humidity)) ?? 1,
    firstGrit: Number(gritText(form)),
    sections: form.sections
      .split(/[,;]/)
      .map((section) => section.trim())
      .filter(Boolean),
    mix,
    problems,
  };
}

const problemIn = (found: Outcome<unknown>): Problem | undefined => (isProblem(found) ? found : undefined);

/** The film is typed in mils by makers who read inches, in micrometres by others. */
function readFilm(
  form: FinishForm,
  inches: boolean,
  { read, found }: ReturnType<typeof formReader>,
): Worked | undefined {
  const solids = read('solids', parseNumber(form.solids));
  const film = read('film', parseNumber(form.film));
  if (solids === undefined || film === undefined) return undefined;
  return found(filmCoverage(solids, inches ? film * micrometresPerMil : film), (field) =>
    field === 'solidsPercent' ? 'solids' : 'film',
  );
}
