import { letterOf } from '../../core/breakdown/board-cuts.ts';
import { panelLayout } from '../../core/breakdown/panel-layout.ts';
import type { BreakdownProblem, Part } from '../../core/breakdown/problem-types.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import { howMany } from '../../ui/how-many.ts';
import { Length } from '../../ui/length.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { FoldCard } from './fold-card.tsx';
import type { Names } from './names.ts';
import { PanelDrawing } from './panel-drawing.tsx';
import { panelWidthWorking } from './panel-width.ts';

interface Props {
  piece: Piece;
  asked: BreakdownProblem;
  plan: Plan;
  names: Names;
}

/** Panel by panel: strips in order, and how they are glued up so that each group still passes the planer. */
export function PanelsView(props: Props) {
  const panels = props.asked.parts.filter(({ panel }) => panel);
  if (panels.length === 0) return <p>No panels: every part is one strip.</p>;
  return (
    <>
      <p class="soft small">
        Lay the strips out like this, turned for the best figure, and strike the triangle across. The looped mark goes
        on the face that shows.
      </p>
      {panels.flatMap((part) =>
        Array.from({ length: part.quantity }, (_, index) => <PanelCard part={part} unit={index + 1} {...props} />),
      )}
    </>
  );
}

function PanelCard({ piece, part, unit, asked, plan, names }: Props & { part: Part; unit: number }) {
  const listed = piece.parts.find(({ id }) => id === part.id);
  const layout = panelLayout(asked.shop, plan, part.id, unit);
  const name = names.piece(part.id, unit);
  const short = plan.short.find((entry) => entry.part === part.id && entry.unit === unit);
  const from = (at: number) => {
    const strip = layout.strips[at];
    return strip ? `${names.of(strip.board)} ${letterOf(plan, strip.blank)}` : '';
  };
  return (
    <section class="card panel-card" aria-label={`Panel ${name}`}>
      <header>
        <h2>{name}</h2>
        <span class="soft">
          <Length mm={part.width} bare /> × <Length mm={part.length} />
        </span>
      </header>
      {layout.strips.length === 0 ? (
        <p>No strips in this plan.</p>
      ) : (
        <PanelDrawing layout={layout} part={part} name={name} from={from} />
      )}
      {short && (
        <p class="trouble">
          Short by <Length mm={short.missingWidth} /> of width.
        </p>
      )}
      <ol class="cuts" aria-label={`Strips of ${name}`}>
        {layout.strips.map((strip) => (
          <li>
            {names.of(strip.board)}, blank {letterOf(plan, strip.blank)}: <Length mm={strip.width} bare /> jointed to{' '}
            <Length mm={strip.jointed} />
          </li>
        ))}
      </ol>
      {layout.groups.length > 1 && (
        <p>
          {groupsInWords(layout.groups)} Each passes the planer, <Length mm={asked.shop.planerWidth} /> wide; then join
          them.
        </p>
      )}
      {layout.strips.length > 0 && (
        <ShowWorking
          of={panelWidthWorking(layout, asked.shop.edgeAllowance)}
          label={`${howMany(layout.strips.length - 1, 'seam')}; how wide it comes out`}
        />
      )}
      {listed && unit === 1 && <FoldCard piece={piece} part={listed} />}
    </section>
  );
}

function groupsInWords(groups: readonly (readonly number[])[]): string {
  const each = groups.map((group) => {
    const first = (group[0] ?? 0) + 1;
    const last = (group.at(-1) ?? 0) + 1;
    return first === last ? `strip ${first} alone` : `strips ${first} ${last - first === 1 ? 'and' : 'to'} ${last}`;
  });
  return `Glue up in ${groups.length} groups: ${each.join(', ')}.`;
}
