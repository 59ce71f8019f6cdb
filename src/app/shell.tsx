import type { ComponentType } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { Button } from '../ui/button.tsx';
import { Screen } from '../ui/screen.tsx';
import { useSignals } from '../ui/signal.ts';
import { CrashScreen } from './errors.tsx';
import { route } from './routes.ts';
import { whenQuiet } from './when-quiet.ts';

/** A screen gets the record that the address names, or an empty id. */
export type ScreenComponent = ComponentType<{ id: string }>;

/** A screen that is fetched (offline, from the cache) when first opened; its question answers the tap at once. */
export interface LaterScreen {
  readonly question: string;
  load(): Promise<{ default: ScreenComponent }>;
}

/** The screen that the app opens with, and the others by name. */
export interface Screens {
  readonly home: ScreenComponent;
  readonly others: Readonly<Record<string, LaterScreen>>;
}

const loaded = new Map<string, ScreenComponent>();

export function Shell({ screens }: { screens: Screens }) {
  useSignals();
  const { screen, id } = route.value;
  const at = `${screen}/${id}`;
  // With the other screens: what they tell is kept until it can be shown.
  const [Banners, setBanners] = useState<ComponentType>();
  useEffect(
    () =>
      whenQuiet(
        () =>
          void import('./banners.tsx').then(
            (its) => setBanners(() => its.Banners),
            () => {},
          ),
      ),
    [],
  );
  return (
    <>
      <CrashScreen at={at} key="crash">
        <Loaded name={screen in screens.others ? screen : ''} id={id} screens={screens} key={at} />
      </CrashScreen>
      {Banners && <Banners />}
    </>
  );
}

function Loaded({ name, id, screens }: { name: string; id: string; screens: Screens }) {
  const [state, setState] = useState<'loading' | 'ready' | 'failed'>(
    name === '' || loaded.has(name) ? 'ready' : 'loading',
  );
  const place = useRef<HTMLDivElement>(null);
  const [shown, setShown] = useState(false);
  // Before the browser paints: nothing is waited for that could be on its way.
  useLayoutEffect(() => {
    scrollTo(0, 0);
    // A screen shows nothing until it has read its records: so long its question stands alone.
    const look = () => setShown(Boolean(place.current?.firstChild));
    const watch = new MutationObserver(look);
    if (place.current) watch.observe(place.current, { childList: true });
    look();
    if (state === 'loading')
      screens.others[name]?.load().then(
        (module) => {
          loaded.set(name, module.default);
          setState('ready');
        },
        () => setState('failed'),
      );
    return () => watch.disconnect();
  }, [name, screens]);
  useEffect(() => {
    // After a change of screen, a keyboard or a screen reader starts at the new screen's beginning.
    if (!shown) return;
    if (arrivedBefore) document.getElementById('main')?.focus({ preventScroll: true });
    arrivedBefore = true;
  }, [shown]);
  const Found = name === '' ? screens.home : loaded.get(name);
  if (state === 'failed') {
    return (
      <Screen question="This screen is not on the phone yet">
        <p>It could not be fetched. Once there is a signal, load the app again; then all of it works without one.</p>
        <Button look="big" onClick={() => location.reload()}>
          Load again
        </Button>
      </Screen>
    );
  }
  return (
    <>
      {!shown && name !== '' && <Screen question={screens.others[name]?.question ?? ''}>{null}</Screen>}
      <div ref={place}>{Found && <Found id={id} />}</div>
    </>
  );
}

let arrivedBefore = false;
