import type { ComponentChildren } from 'preact';
import type { ClampCorrection } from '../../core/square/correction-clamps.ts';
import type { CutCorrection } from '../../core/square/correction-cut.ts';
import { Length } from '../../ui/length.tsx';
import { Say } from '../../ui/say.tsx';
import type { Correction } from './correction-of.ts';

/** The answer, large and once: what moves, by how much, which way. */
export function Answer({ of, good, children }: { of: Correction; good: boolean; children?: ComponentChildren }) {
  return (
    <div class={good ? 'answer' : 'answer now'}>
      {of.kind === 'cuts' && of.cuts.map(({ value }) => <Move of={value} />)}
      {of.kind === 'squeeze' && <Squeeze of={of.clamps.value} />}
      {of.kind === 'say' && (
        <p class="figure words">
          <Say phrase={of.say} />
        </p>
      )}
      {children}
    </div>
  );
}

function Move({ of: { hand, move } }: { of: CutCorrection }) {
  return (
    <p>
      <span class="figure">
        <Length mm={move.distance} />{' '}
      </span>
      <b>
        {move.towards ? 'towards' : 'away from'} {move.other}
      </b>
      <br />
      {hand === 'right' ? 'Right' : 'Left'}-hand cut, {'AB'.includes(move.corner) ? 'front' : 'back'} end at{' '}
      {move.corner}
    </p>
  );
}

function Squeeze({ of: { squeeze, shorten, square, pullTo } }: { of: ClampCorrection }) {
  return (
    <p>
      <span class="figure">
        <Length mm={shorten} />{' '}
      </span>
      <b>off {squeeze === 'diagonalAC' ? 'A to C' : 'B to D'}</b>
      <br />
      Squeeze until it reads <Length mm={square} />, then <Length mm={square - pullTo} /> more. Let it spring back and
      measure both again.
    </p>
  );
}
