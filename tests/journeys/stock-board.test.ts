import { expect, test } from 'vitest';
import { logOne, marks, openBoard, openStock, pad, phone, section, sectionBox, startAtTheRack } from './at-the-rack.ts';

startAtTheRack();

test('one board: marked with the thumb, warp, set aside, cut, an offcut that knows its parent', async () => {
  const { page } = phone;
  await logOne('L1', '8', '96');
  await openBoard('L1');
  const clear = section('What is clear?');
  await clear.getByText('Clear: 96 in by 8 in').waitFor();
  // A stroke of the thumb across the whole board in its middle parts it in two.
  await clear.locator('svg').scrollIntoViewIfNeeded();
  const face = await clear.locator('svg').boundingBox();
  if (!face) throw new Error('no drawing');
  await page.mouse.move(face.x + face.width * 0.45, face.y + 1);
  await page.mouse.down();
  await page.mouse.move(face.x + face.width * 0.5, face.y + face.height * 0.5);
  await page.mouse.move(face.x + face.width * 0.55, face.y + face.height - 1);
  await page.mouse.up();
  await clear.getByText(/^knot at/).waitFor();
  expect(await clear.locator('li').count()).toBe(2);
  await clear.getByText(/^knot at/).click();
  await sectionBox('What is clear?', 'From the near end').fill('40');
  await sectionBox('What is clear?', 'Along the board').fill('8');
  await clear.getByText('Clear: 40 in by 8 in', { exact: false }).waitFor();
  await clear.getByText('Clear: 48 in by 8 in', { exact: false }).waitFor();
  await clear.getByRole('button', { name: 'Delete the knot' }).click();
  await clear.getByText('Clear: 96 in by 8 in').waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await clear.getByText('Clear: 40 in by 8 in', { exact: false }).waitFor();

  // 1 in less twist 0, cup 1/8, bow 1/4 and 3/64 (1.2 mm) a face: 0.5305 in flattened whole (plane geometry, by hand).
  await sectionBox('Warp', 'Cup').fill('1/8');
  await sectionBox('Warp', 'Bow').fill('1/4');
  const thickness = section('Thickness to be had');
  await thickness.locator('dd', { hasText: '1/2 in' }).waitFor();
  await sectionBox('Warp', 'Cup').fill('90');
  await section('Warp').getByRole('alert').waitFor();
  await sectionBox('Warp', 'Cup').fill('');

  const life = section('Where is it?');
  await page.keyboard.press('Escape');
  await life.getByRole('radio', { name: 'Cut' }).check();
  await page.getByText('L1: cut.').waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.waitForFunction(() => document.querySelector<HTMLInputElement>('input[value=rack]')?.checked);
  await life.getByText('Add an offcut').click();
  await life.getByRole('textbox', { name: /^Offcut width/ }).fill('9');
  await life.getByRole('textbox', { name: /^Offcut length/ }).fill('30');
  await pad('Add offcut').click();
  await life.getByText('can’t be more than').waitFor();
  await life.getByRole('textbox', { name: /^Offcut width/ }).fill('5 1/2');
  await life.getByRole('textbox', { name: /^Offcut length/ }).fill('30');
  await pad('Add offcut').click();
  await life.getByRole('link', { name: 'Offcut L1-1' }).click();
  await page.getByRole('link', { name: 'board L1' }).click();
  await page.getByRole('heading', { level: 1, name: 'What is in board L1?' }).waitFor();
  await life.getByRole('radio', { name: 'Used up' }).check();
  await page.getByText('L1: used up.').waitFor();
  // A mark misread on an old board is put right on its own page; a taken one is refused.
  await sectionBox('Mark and sizes', 'Chalk mark').fill('l1-1');
  await section('Mark and sizes').getByText('Another board has this mark.').waitFor();
  await sectionBox('Mark and sizes', 'Chalk mark').fill('L7');
  await page.getByRole('heading', { level: 1, name: 'What is in board L7?' }).waitFor();
  await page.getByRole('link', { name: 'To the rack' }).click();
  await page.locator('.board-row').first().waitFor();
  expect(await marks()).toEqual(['L1-1']);

  // Found, filtered, sorted; the totals are those of what is shown.
  await logOne('L2', '10', '120');
  // The pad stands open for the next width by then, and takes no more focus from other entries.
  await pad('Next').waitFor();
  await page.getByRole('textbox', { name: /^Find/ }).fill('cherry l2');
  await page.locator('section[aria-label=Tally]', { hasText: '1 board shown, of 3 logged' }).waitFor();
  // 10 in × 10 ft ÷ 12 = 8.33, so 8 (NHLA).
  await page.locator('section[aria-label=Tally] .figure', { hasText: /^8 board feet$/ }).waitFor();
  await page.getByRole('textbox', { name: /^Find/ }).fill('');
  await page.getByText('Filter and sort').click();
  await page.getByLabel('Where').selectOption({ label: 'All' });
  await page.getByLabel('Sorted').selectOption({ label: 'Widest first' });
  await page.getByRole('textbox', { name: /^At least wide/ }).fill('8');
  await page.waitForFunction(() => document.querySelectorAll('.board-row').length === 2);
  expect(await marks()).toEqual(['L2', 'L7']);
  // Looked at and left again, the list is as it was searched.
  await page.keyboard.press('Escape');
  await page.locator('.board-row', { hasText: 'L7' }).click();
  await page.getByRole('link', { name: 'To the rack' }).click();
  await page.locator('section[aria-label=Tally]', { hasText: '2 boards shown, of 3 logged' }).waitFor();
  expect(await marks()).toEqual(['L2', 'L7']);
  expect(phone.errors).toEqual([]);
});

test('a straightedge and winding sticks that are out are put right where they told the warp', async () => {
  const { page } = phone;
  await page.goto(`${phone.host.address}#/shop`);
  await page.getByLabel('1/32').check();
  await page.goto(`${phone.host.address}#/square/tools`);
  const entry = (label: string) => page.getByRole('textbox', { name: new RegExp(`^${label}`) });
  const remember = async (kind: string, entries: Record<string, string>) => {
    await page.getByLabel(kind).check();
    for (const [label, text] of Object.entries(entries)) await entry(label).fill(text);
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Keep its error' }).click();
    await page.getByText(`${entries['Name of the tool']} kept.`).waitFor();
  };
  // Crowned by 1/8 in over 32 in; the sticks differ by half of 1/4 in over 32 in.
  await remember('Straightedge', { 'Between the points': '32', 'Widest gap': '1/4', 'Name of the tool': 'old edge' });
  await remember('Winding sticks', {
    'Length of the sticks': '32',
    'Width of the board': '16',
    'Gap seen': '1/4',
    'Gap, swapped': '0',
    'Name of the tool': 'oak sticks',
  });
  await openStock();
  await logOne('W1', '16', '96');
  await openBoard('W1');
  await sectionBox('Warp', 'Cup').fill('3/32');
  await sectionBox('Warp', 'Twist').fill('1/8');
  await page.keyboard.press('Escape');
  await section('Warp').getByLabel('Straightedge').selectOption({ label: 'old edge' });
  await section('Warp').getByLabel('Winding sticks').selectOption({ label: 'oak sticks' });
  // By hand: 3/32 + 1/8 x (16 / 32)² = 1/8; (1/8 + 1/8) x 16 / 32 = 1/8.
  await section('Warp').getByText('Cup without the tool’s error: 1/8').waitFor();
  await section('Warp').getByText('Twist without the tool’s error: 1/8').waitFor();
  // 1 in less cup 1/8, bow 0, half the twist and 1/16 a face.
  await sectionBox('Warp', 'Bow').fill('0');
  const whole = section('Thickness to be had').locator('dd').nth(1);
  await expect.poll(() => whole.textContent()).toContain('11/16 in');
  await section('Warp').getByLabel('Straightedge').selectOption({ label: 'A string, or not tested' });
  await expect.poll(() => whole.textContent()).toContain('23/32 in');
  expect(phone.errors).toEqual([]);
});

test('the way back for a board that is cut by then leaves it cut', async () => {
  const { page } = phone;
  await logOne('T1', '8', '96');
  await openBoard('T1');
  const life = section('Where is it?');
  await life.getByRole('radio', { name: 'Set aside' }).check();
  await page.getByText('T1: set aside.').waitFor();
  const other = await phone.context.newPage();
  await other.goto(page.url());
  await other.getByRole('radio', { name: 'Cut' }).check();
  await other.getByText('T1: cut.').waitFor();
  await expect.poll(() => life.getByRole('radio', { name: 'Cut' }).isChecked()).toBe(true);
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.waitForTimeout(300);
  expect(await life.getByRole('radio', { name: 'Cut' }).isChecked()).toBe(true);
});
