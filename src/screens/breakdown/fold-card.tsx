import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { badPartSize } from '../../core/lumber/check-part.ts';
import { pieces } from '../../store/pieces.ts';
import { foldOf, type PartFold } from '../../store/records/part-fold.ts';
import type { Part, Piece } from '../../store/records/piece.ts';
import type { Json } from '../../store/records/record.ts';
import { Button } from '../../ui/button.tsx';
import { Length } from '../../ui/length.tsx';
import { SettledLength, SettledNumber } from '../../ui/settled.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import { SettledText } from '../piece/settled-text.tsx';
import { changeCorner, changeSection, firstFold, foldLayout, withoutSection, withSection } from './fold-edits.ts';
import { FoldLayout } from './fold-layout.tsx';
import { badCorner, badTrim } from './fold-limits.ts';
import { planShop } from './problem-from-records.ts';

interface Props {
  piece: Piece;
  part: Part;
}

/** Of a panel whose grain runs on round corners: its sections in order along the grain, and where it is cut. */
export function FoldCard({ piece, part }: Props) {
  const kerf = planShop(shop.value).crosscutKerf;
  const fold = foldOf(part);
  const change = (edit: (now: Part) => Part) =>
    void pieces
      .change(piece.id, (now) => ({ ...now, parts: now.parts.map((one) => (one.id === part.id ? edit(one) : one)) }))
      .catch(() => {});
  const store = (next: PartFold | undefined) =>
    change(({ fold: _, ...now }) => (next ? { ...now, fold: next as unknown as Json } : now));
  // On the fold as it is stored by then: typing is faster than storing.
  const edit = (next: (now: PartFold) => PartFold) =>
    change((now) => {
      const stored = foldOf(now);
      return stored ? { ...now, fold: next(stored) as unknown as Json } : now;
    });
  if (!fold) {
    return <Button onClick={() => store(firstFold(part, kerf))}>It folds round corners</Button>;
  }
  const layout = foldLayout(part, kerf);
  return (
    <details class="working fold">
      <summary>Folds round corners: {fold.sections.length} parts along the grain</summary>
      {fold.sections.map((section, at) => (
        <>
          <SettledText
            label={`Part ${at + 1}`}
            value={section.name}
            onAccept={(name) => edit((now) => changeSection(now, at, { name }))}
          />
          <SettledLength
            label={`Length of part ${at + 1}, outside`}
            value={section.length}
            check={(value) => badPartSize('length', value)}
            onAccept={(length) => edit((now) => changeSection(now, at, { length }))}
          />
          {at < fold.corners.length && (
            <div class="fields">
              <SettledNumber
                label={`Corner ${at + 1}`}
                hint="°"
                value={fold.corners[at]?.degrees ?? 90}
                check={badCorner}
                onAccept={(degrees) => edit((now) => changeCorner(now, at, { degrees }))}
              />
              <SettledLength
                label={`Trim at corner ${at + 1}`}
                value={fold.corners[at]?.trim ?? 0}
                check={badTrim}
                onAccept={(trim) => edit((now) => changeCorner(now, at, { trim }))}
              />
            </div>
          )}
        </>
      ))}
      <div class="buttons">
        <Button onClick={() => edit(withSection)}>Add part</Button>
        <Button onClick={() => store(withoutSection(fold))}>
          {fold.sections.length > 2 ? 'Delete the last part' : 'It does not fold'}
        </Button>
      </div>
      {isProblem(layout) && <Trouble of={layout} />}
      {layout && !isProblem(layout) && (
        <>
          {/* A tenth of a millimetre is less than anyone cuts to. */}
          {Math.abs(layout.part.length - part.length) > 0.1 && (
            <div class="answer now">
              <p>
                With their cuts they take <Length mm={layout.part.length} />; the panel is <Length mm={part.length} />{' '}
                long.
              </p>
              <Button onClick={() => change((now) => ({ ...now, length: layout.part.length }))}>
                Make the panel that long
              </Button>
            </div>
          )}
          <FoldLayout layout={layout} />
        </>
      )}
    </details>
  );
}
