import type { Page } from 'playwright-core';

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** Processor time, microseconds. */
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

/** Processor time in ms of the longest task on the page's main thread while `work` runs, whatever else the machine does meanwhile. */
export async function longestTask(page: Page, work: () => Promise<unknown>): Promise<number> {
  const session = await page.context().newCDPSession(page);
  const events: TraceEvent[] = [];
  session.on('Tracing.dataCollected', ({ value }) => events.push(...(value as unknown as TraceEvent[])));
  await session.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories: ['toplevel', 'disabled-by-default-devtools.timeline'] },
  });
  await work();
  const complete = new Promise((done) => session.once('Tracing.tracingComplete', done));
  await session.send('Tracing.end');
  await complete;
  await session.detach();
  const thread = ({ pid, tid }: TraceEvent) => `${pid} ${tid}`;
  const mains = new Set(
    events.filter(({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain').map(thread),
  );
  const tasks = events.filter((event) => event.name.endsWith('RunTask') && mains.has(thread(event)));
  if (tasks.length === 0) throw new Error('the browser told of no task');
  return tasks.reduce((longest, { tdur = 0 }) => Math.max(longest, tdur), 0) / 1000;
}
