import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';

const source = readFileSync('node_modules/axe-core/axe.min.js', 'utf8');

interface Finding {
  readonly id: string;
  readonly nodes: readonly { readonly html: string }[];
}

/** What axe finds on the page as it stands, by the rules of WCAG 2.2 AA; one line a finding. */
export async function axeFindings(page: Page): Promise<string[]> {
  // Through the debugger, since the app's own policy lets no foreign script in.
  const session = await page.context().newCDPSession(page);
  await session.send('Runtime.evaluate', { expression: source });
  const { result } = await session.send('Runtime.evaluate', {
    expression: `axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] })
      .then(({ violations }) => JSON.stringify(violations.map(({ id, nodes }) => ({ id, nodes: nodes.map(({ html }) => ({ html })) }))))`,
    awaitPromise: true,
  });
  await session.detach();
  const found = JSON.parse(result.value as string) as Finding[];
  return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`);
}
