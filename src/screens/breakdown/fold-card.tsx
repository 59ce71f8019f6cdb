import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { badCorner, badTrim, type PanelFold } from '../../core/breakdown/folded-panel.ts';
import { partLimits, partName } from '../../core/lumber/check-part.ts';
import { pieces } from '../../store/pieces.ts';
import { foldOf } from '../../store/records/part-fold.ts';
import type { Part, Piece } from '../../store/records/piece.ts';
import type { Json } from '../../store/records/record.ts';
import { withOptional } from '../../store/records/with-optional.ts';
import { Button } from '../../ui/button.tsx';
import { Length } from '../../ui/length.tsx';
import { SettledLength, SettledNumber, SettledText } from '../../ui/settled.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import { changePart } from '../piece/piece-edits.ts';
import { changedAt, firstFold, foldLayout, withoutSection, withSection } from './fold-edits.ts';
import { FoldLayout } from './fold-layout.tsx';
import { planShop } from './problem-from-records.ts';

interface Props {
  piece: Piece;
  part: Part;
}

/** Of a panel whose grain runs on round corners: its sections in order along the grain, and where it is cut. */
export function FoldCard({ piece, part }: Props) {
  const kerf = planShop(shop.value).crosscutKerf;
  const fold = foldOf(part);
  // On the fold as it is stored by then: typing is faster than storing.
  const edit = (next: (now: PanelFold) => PanelFold | undefined) =>
    pieces.edit(piece.id, (now) => ({
      ...now,
      parts: now.parts.map((one) =>
        one.id === part.id
          ? withOptional(one, 'fold', next(foldOf(one) ?? firstFold(one, kerf)) as unknown as Json)
          : one,
      ),
    }));
  if (!fold) return <Button onClick={() => edit((first) => first)}>It folds round corners</Button>;
  const section = (at: number, change: Partial<PanelFold['sections'][number]>) =>
    edit((now) => ({ ...now, sections: changedAt(now.sections, at, change) }));
  const corner = (at: number, change: Partial<PanelFold['corners'][number]>) =>
    edit((now) => ({ ...now, corners: changedAt(now.corners, at, change) }));
  const layout = foldLayout(part, kerf);
  return (
    <details class="working fold">
      <summary>Folds round corners: {fold.sections.length} parts along the grain</summary>
      {fold.sections.map(({ name, length }, at) => {
        const after = fold.corners[at];
        return (
          <>
            <SettledText
              label={`Part ${at + 1}`}
              value={name}
              check={partName}
              onAccept={(now) => section(at, { name: now })}
            />
            <SettledLength
              label={`Length of part ${at + 1}, outside`}
              value={length}
              limits={partLimits.length}
              onAccept={(now) => section(at, { length: now })}
            />
            {after && (
              <div class="fields">
                <SettledNumber
                  label={`Corner ${at + 1}`}
                  hint="°"
                  value={after.degrees}
                  check={badCorner}
                  onAccept={(degrees) => corner(at, { degrees })}
                />
                <SettledLength
                  label={`Trim at corner ${at + 1}`}
                  value={after.trim}
                  check={badTrim}
                  onAccept={(trim) => corner(at, { trim })}
                />
              </div>
            )}
          </>
        );
      })}
      <div class="buttons">
        <Button onClick={() => edit(withSection)}>Add part</Button>
        <Button onClick={() => edit(withoutSection)}>
          {fold.sections.length > 2 ? 'Delete the last part' : 'It does not fold'}
        </Button>
      </div>
      {isProblem(layout) && <Trouble of={layout} />}
      {layout && !isProblem(layout) && (
        <>
          {/* A tenth of a millimetre is less than anyone cuts to. */}
          {Math.abs(layout.length - part.length) > 0.1 && (
            <div class="answer now">
              <p>
                With their cuts they take <Length mm={layout.length} />; the panel is <Length mm={part.length} /> long.
              </p>
              <Button
                onClick={() => pieces.edit(piece.id, (now) => changePart(now, part.id, { length: layout.length }))}
              >
                Make the panel that long
              </Button>
            </div>
          )}
          <FoldLayout width={part.width} of={layout} />
        </>
      )}
    </details>
  );
}
