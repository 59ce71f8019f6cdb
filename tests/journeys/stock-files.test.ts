import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { logOne, phone, startAtTheRack } from './at-the-rack.ts';

startAtTheRack();

test('the rack list goes out as CSV and comes in as it was; broken files are told line by line, and nothing half comes in', async () => {
  const { page } = phone;
  await logOne('=C1', '6 1/4', '96');
  await logOne('C2', '7 3/8', '100 1/2');
  await page.getByRole('link', { name: 'List out and in' }).click();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as CSV' }).click();
  const path = await (await download).path();
  const text = readFileSync(path, 'utf8');
  // No cell begins with what a spreadsheet runs.
  expect(text).toContain("'=C1");
  expect(text.split('\r\n').length).toBe(4);
  const choose = (name: string, content: string | Buffer) =>
    page
      .getByLabel('Choose a CSV file')
      .setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(content as string) });

  // They are there already: each line says so, and nothing can be taken in.
  await choose('rack.csv', text);
  await page.getByText('0 boards can come in').waitFor();
  expect(await page.getByRole('list', { name: 'Problems' }).locator('li').count()).toBe(2);

  const refused: [string, string][] = [
    ['', 'The file is empty'],
    ['a,b\r\n1,2', 'No column for species, thickness, width, length'],
    ['species,thickness (quarters),width,length (in)\r\n', 'must say its unit'],
  ];
  for (const [content, says] of refused) {
    await choose('wrong.csv', content);
    await page.getByRole('alert').getByText(says).waitFor();
  }
  // Fifty thousand lines, and a file of two bytes a letter, are refused whole; one in another encoding that begins
  // like ours is told at the line that it spoils.
  const fifty = `species,thickness (quarters),width (in),length (in)\r\n${'black cherry,4,6,96\r\n'.repeat(50_000)}`;
  const before = performance.now();
  await choose('many.csv', fifty);
  await page.getByRole('alert').getByText('More than 20000 lines').waitFor();
  console.log(`50,000 lines refused after ${Math.round(performance.now() - before)} ms`);
  await choose('two-bytes.csv', Buffer.from(text, 'utf16le'));
  await page.getByRole('alert').getByText('UTF-8').waitFor();
  const oneByte = 'species,thickness (quarters),width (in),length (in),note\r\nblack cherry,4,6,96,für Türen';
  await choose('one-byte.csv', Buffer.from(oneByte, 'latin1'));
  await page.getByText('0 boards can come in').waitFor();
  expect(await page.getByRole('list', { name: 'Problems' }).locator('li').allTextContents()).toEqual([
    expect.stringMatching(/^Line 2: .*UTF-8/),
  ]);
  await choose(
    'half.csv',
    [
      'chalk mark,species,thickness (quarters),width (in),length (in),colour',
      'D1,"cherry, black",4,6,96,red',
      'D2,kryptonwood,4,6,96,',
      'D3,black cherry,4,six,96,',
      'D4,black cherry,4,6,90000,',
      'D1,black cherry,4,6,96,',
      '=HYPERLINK(1),black cherry,8,7,96,',
      'D7,black cherry,4,6',
    ].join('\r\n'),
  );
  await page.getByText('2 boards can come in').waitFor();
  await page.getByText('Columns passed over: colour.').waitFor();
  const problems = await page.getByRole('list', { name: 'Problems' }).locator('li').allTextContents();
  expect(problems.map((one) => one.split(':')[0])).toEqual([
    'Line 3, species',
    'Line 4, width',
    'Line 5, length',
    'Line 6, chalk mark',
    'Line 8, length',
  ]);
  // Left: nothing came in.
  await page.getByRole('button', { name: 'Leave it' }).click();
  await page.getByText('2 boards logged.').waitFor();

  // The list comes back into an empty rack just as it went out.
  await page.getByRole('link', { name: 'To the rack' }).click();
  for (const mark of ['C2', '=C1']) {
    await page.getByRole('button', { name: `Fix ${mark}` }).click();
    await page.getByRole('button', { name: `Delete ${mark}` }).click();
    await page.getByText(`${mark} deleted.`).waitFor();
  }
  await page.getByRole('link', { name: 'List out and in' }).click();
  await choose('rack.csv', text);
  await page.getByRole('button', { name: 'Add 2 boards' }).click();
  await page.getByText('2 boards added.').waitFor();
  await page.locator('.board-row', { hasText: '=C1' }).waitFor();
  await page.getByRole('link', { name: 'List out and in' }).click();
  const again = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as CSV' }).click();
  const lines = (csv: string) => csv.split('\r\n').sort();
  expect(lines(readFileSync(await (await again).path(), 'utf8'))).toEqual(lines(text));

  // On paper: the list, and a label for each end.
  await page.evaluate(() => {
    window.print = () => {};
  });
  await page.getByRole('button', { name: 'Print the list' }).click();
  await page.emulateMedia({ media: 'print' });
  await page.getByRole('table', { name: /^Rack list/ }).waitFor();
  expect(await page.getByRole('rowheader').allTextContents()).toEqual(expect.arrayContaining(['=C1', 'C2']));
  expect(await page.getByRole('button').first().isVisible()).toBe(false);
  await page.emulateMedia({ media: 'screen' });
  await page.getByRole('button', { name: 'Print end labels' }).click();
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('.labels li').allTextContents()).toHaveLength(2);
  expect(await page.locator('.labels li').first().isVisible()).toBe(true);
  expect(await page.getByRole('heading', { level: 1 }).isVisible()).toBe(false);
  expect(phone.errors).toEqual([]);
});
