import { useState } from 'preact/hooks';
import { undoable } from '../../../app/notices.ts';
import { go } from '../../../app/routes.ts';
import { isProblem, type Outcome } from '../../../core/answer/problem.ts';
import { mostText, tooLarge } from '../../../core/lumber/parse-rack-csv.ts';
import { rackHeader } from '../../../core/lumber/rack-columns.ts';
import { writeRackCsv } from '../../../core/lumber/write-rack-csv.ts';
import { boards as store } from '../../../store/boards.ts';
import { remove } from '../../../store/remove.ts';
import { Card } from '../../../ui/card.tsx';
import { howMany } from '../../../ui/how-many.ts';
import { saveFile } from '../../../ui/save-file.ts';
import { Say } from '../../../ui/say.tsx';
import { units } from '../../../ui/units.ts';
import { filterRack, sortRack, wholeRack } from '../rack-filter.ts';
import { StockPart } from '../stock-part.tsx';
import { today } from '../today.ts';
import { useRack } from '../use-rack.ts';
import { ImportPreview } from './import-preview.tsx';
import { PrintSheet } from './print-sheet.tsx';
import './rack-files.css';
import { Button } from '../../../ui/button.tsx';
import { type RackImport, rackRow, readRackImport } from './rack-rows.ts';

/** The rack list: out as CSV or on paper, and in again with everything checked first. */
export function RackFiles() {
  const all = useRack();
  const [found, setFound] = useState<Outcome<RackImport>>();
  const [sheet, setSheet] = useState<'list' | 'labels'>();
  if (!all) return null;
  const shown = sortRack(filterRack(all, wholeRack), 'mark');

  const takeOut = () =>
    saveFile(`rack-${today(Date.now())}.csv`, 'text/csv', writeRackCsv(all.map(rackRow), units.value.unit));

  const read = async (file: File | undefined) => {
    if (!file) return;
    setFound(file.size > mostText ? tooLarge : readRackImport(await file.text(), all, Date.now()));
  };

  const takeIn = ({ boards }: RackImport) => {
    go('stock');
    return undoable(store.addMany(boards), `${howMany(boards.length, 'board')} added.`, (stored) =>
      remove(stored.map(({ id }) => ({ kind: 'board', id }))),
    );
  };

  const print = (what: 'list' | 'labels') => {
    setSheet(what);
    // Once the sheet stands on the page.
    requestAnimationFrame(() => requestAnimationFrame(() => window.print()));
  };

  return (
    <StockPart question="Take the list out, or in?">
      <Card title="Out">
        <p class="soft">{howMany(all.length, 'board')} logged. A spreadsheet reads CSV.</p>
        <div class="buttons">
          <Button onClick={takeOut}>Save as CSV</Button>
          <Button onClick={() => print('list')}>Print the list</Button>
          <Button onClick={() => print('labels')}>Print end labels</Button>
        </div>
      </Card>
      <Card title="In">
        <p class="soft">
          The first line names the columns: {rackHeader(units.value.unit).join(', ')}; lengths in mm or in. Species,
          width, length and one thickness are needed.
        </p>
        <label class="button">
          Choose a CSV file
          <input
            class="hidden-visually"
            type="file"
            accept=".csv,text/csv,text/plain"
            onChange={(event) => {
              const { currentTarget } = event;
              void read(currentTarget.files?.[0]).finally(() => {
                // The same file, put right, may be chosen again.
                currentTarget.value = '';
              });
            }}
          />
        </label>
        {found &&
          (isProblem(found) ? (
            <p class="trouble" role="alert">
              <Say phrase={found.message} />
            </p>
          ) : (
            <ImportPreview found={found} onTake={() => takeIn(found)} onLeave={() => setFound(undefined)} />
          ))}
      </Card>
      {sheet && <PrintSheet what={sheet} boards={shown} />}
    </StockPart>
  );
}
