import { shop } from '../../app/shop.ts';
import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { type Air, equilibriumMoisture } from '../../core/moisture/equilibrium-moisture.ts';
import { moistureProblem } from '../../core/moisture/moisture-problem.ts';
import { pieces } from '../../store/pieces.ts';
import type { Piece } from '../../store/records/piece.ts';
import { editShop } from '../../store/shop.ts';
import { climates } from '../../tables/climates.ts';
import { Pick } from '../../ui/fields.tsx';
import { SettledNumber, SettledTemperature } from '../../ui/settled.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { degreesSign } from '../../ui/temperature.ts';
import { Trouble } from '../../ui/trouble.tsx';
import { climateOf, presetOf } from './climate-of.ts';
import { SeasonFacts } from './season-facts.tsx';
import type { PieceSeasons } from './seasons-of-piece.ts';

interface Props {
  piece: Piece;
  seasons: Outcome<Worked<PieceSeasons>>;
}

/** Where the piece will live, and what its wood reads today: what every verdict rests on. */
export function SeasonsCard({ piece, seasons }: Props) {
  const climate = climateOf(piece, shop.value);
  const preset = presetOf(climate);
  // A write that fails is kept and shown by the shell.
  const setClimate = async (part: { dry?: Partial<Air>; wet?: Partial<Air> }) => {
    const changed = (now: Piece): Piece => {
      const { dry, wet } = climateOf(now, shop.value);
      return { ...now, climate: { dry: { ...dry, ...part.dry }, damp: { ...wet, ...part.wet } } };
    };
    const climate = (await pieces.change(piece.id, changed).catch(() => undefined))?.climate;
    if (climate) editShop((now) => ({ ...now, climate }));
  };
  const setReading = (percent: number) =>
    pieces.edit(piece.id, (now) => ({ ...now, reading: { at: Date.now(), percent } }));
  const today = isProblem(seasons) ? (piece.reading?.percent ?? 8) : seasons.value.today;
  return (
    <section class="task" aria-label="Seasons">
      <h2>Moisture</h2>
      {isProblem(seasons) ? (
        <Trouble of={seasons} />
      ) : (
        <>
          <div aria-live="polite">
            <SeasonFacts of={seasons.value} />
          </div>
          <ShowWorking of={seasons.working} />
        </>
      )}
      <SettledNumber
        label="The wood reads today"
        hint="%"
        value={Math.round(today * 10) / 10}
        check={(value) => moistureProblem('', value)}
        onAccept={setReading}
      />
      <Pick
        label="Where it will live"
        value={preset}
        options={[
          ...climates.map(({ id, name }) => ({ value: id, label: name })),
          ...(preset === '' ? [{ value: '', label: 'As typed below' }] : []),
        ]}
        onInput={(id) => {
          const chosen = climates.find((one) => one.id === id);
          if (chosen) void setClimate(chosen);
        }}
      />
      <p class="soft small">Assumed; a year of hygrometer readings is better.</p>
      <details class="working">
        <summary>The air there</summary>
        <div class="fields">
          {(['dry', 'wet'] as const).map((season) => {
            const name = season === 'dry' ? 'Dry season' : 'Damp season';
            const air = climate[season];
            const set = (part: Partial<Air>) => void setClimate({ [season]: part });
            return (
              <>
                <SettledTemperature
                  label={name}
                  hint={degreesSign()}
                  value={air.celsius}
                  unit="celsius"
                  limits={{ least: -30, most: 50 }}
                  onAccept={(celsius) => set({ celsius })}
                />
                <SettledNumber
                  label={`${name} humidity`}
                  hint="%"
                  value={air.humidity}
                  check={(humidity) => equilibriumMoisture({ ...air, humidity })}
                  onAccept={(humidity) => set({ humidity })}
                />
              </>
            );
          })}
        </div>
      </details>
    </section>
  );
}
