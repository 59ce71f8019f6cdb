import { undoable } from '../../app/notices.ts';
import type { Reference } from '../../store/records/shop.ts';
import { Button } from '../../ui/button.tsx';
import { day } from '../../ui/day.ts';
import { Say } from '../../ui/say.tsx';
import { sayToolError, setTools, withoutTool, withReference } from './tool-error.ts';

/** The tools that were tested, each with its own error. */
export function ToolList({ references }: { references: readonly Reference[] }) {
  if (references.length === 0) return null;
  const remove = (gone: Reference) =>
    undoable(
      setTools((tools) => withoutTool(tools, gone.tool)),
      `${gone.tool} deleted.`,
      () => setTools((tools) => withReference(tools, gone)),
    );
  return (
    <section aria-label="Tools tested">
      <h2>Tools tested</h2>
      <ul class="rows">
        {references.map((reference) => (
          <li key={reference.tool}>
            <span>
              <b>{reference.tool}</b>: <Say phrase={sayToolError(reference)} />
              <br />
              <span class="soft small">{day(reference.at)}</span>
            </span>
            <Button label={`Delete ${reference.tool}`} onClick={() => remove(reference)}>
              Delete
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}
