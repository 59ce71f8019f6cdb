import { Button } from '../../ui/button.tsx';
import { Say } from '../../ui/say.tsx';
import { useClockJump } from './use-clock-jump.ts';

/** Says that the phone's clock was set, and what that does to the timers. */
export function ClockJumpNote() {
  const [jump, putAside] = useClockJump();
  if (!jump) return null;
  return (
    <div class="answer now" role="alert">
      <p>
        <Say phrase={jump} />
      </p>
      <Button onClick={putAside}>Seen</Button>
    </div>
  );
}
