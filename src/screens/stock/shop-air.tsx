import { offerUndo } from '../../app/notices.ts';
import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { celsius as inCelsius, percent as inPercent } from '../../core/answer/quantity.ts';
import { airOverTime } from '../../core/moisture/air-over-time.ts';
import { equilibriumMoisture } from '../../core/moisture/equilibrium-moisture.ts';
import type { AirReading, Shop } from '../../store/records/shop.ts';
import { changeShop, editShop } from '../../store/shop.ts';
import { Amount } from '../../ui/amount.tsx';
import { Answer } from '../../ui/answer.tsx';
import { Reason } from '../../ui/reason.tsx';
import { degreesSign, readTemperature } from '../../ui/temperature.ts';
import { without } from '../../ui/without.ts';
import { MoistureChart } from './moisture-chart.tsx';
import { targetById } from './moisture-targets.ts';
import { ReadingForm, readPercent } from './reading-form.tsx';
import { ReadingList } from './reading-list.tsx';
import { StockPart } from './stock-part.tsx';

const reads = {
  celsius: readTemperature,
  humidity: readPercent,
};

const withAir = (edit: (now: Shop['air']) => readonly AirReading[]) => (now: Shop) => ({ ...now, air: edit(now.air) });

/** The air of the shop over time, and what it holds wood at. */
export function ShopAir() {
  const { air = [], driedFor } = shop.value;
  const found = airOverTime(air, Date.now());
  const history = air
    .toSorted((a, b) => a.at - b.at)
    .flatMap((reading) => {
      const equilibrium = equilibriumMoisture(reading);
      return isProblem(equilibrium) ? [] : { at: reading.at, percent: equilibrium.value };
    });
  return (
    <StockPart question="What does the air in the shop do to wood?">
      {air.length === 0 ? (
        <p>Read thermometer and hygrometer now and then: drying, glue and finish go by them.</p>
      ) : isProblem(found) ? (
        <Reason of={found} />
      ) : (
        <Answer label="It holds wood at" of={inPercent(found.value)} working={found.working} />
      )}
      <MoistureChart readings={history} band={targetById(driedFor).band} />
      <ReadingForm
        formKey="air-form-2"
        reads={reads}
        labels={{ celsius: ['Temperature', degreesSign()], humidity: ['Humidity', '%'] }}
        hint="Where the wood stands, away from heater and door."
        onNote={async (air, at) => {
          const reading = { at, ...air };
          await changeShop(withAir((now = []) => [...now, reading]));
          offerUndo('Reading kept.', () => editShop(withAir((now) => without(now, reading))));
        }}
      />
      <ReadingList readings={air} edit={(change) => editShop(withAir(change))}>
        {({ celsius, humidity }) => (
          <>
            <Amount of={inCelsius(celsius)} />, <Amount of={inPercent(humidity)} />
          </>
        )}
      </ReadingList>
    </StockPart>
  );
}
