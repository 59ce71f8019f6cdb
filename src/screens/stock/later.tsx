import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/** A part of the screen that is fetched only when it is asked for. */
export function Later({ load }: { load(): Promise<{ default: ComponentType }> }) {
  const [Found, setFound] = useState<ComponentType>();
  const [failed, setFailed] = useState(false);
  useEffect(() => {
    load().then(
      (module) => setFound(() => module.default),
      () => setFailed(true),
    );
  }, [load]);
  if (failed)
    return <p class="trouble">This part is not on the phone yet. Load the app again once there is a signal.</p>;
  return Found ? <Found /> : null;
}
